// Riders and bikes to look around with: all invented.

type Step = { readonly as: string; readonly run: string } | { readonly as: string; readonly say: string };

export const DEMO_MEMBERS = ["Ines", "Tomasz"] as const;

export const DEMO: readonly Step[] = [
  { as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" },
  { as: "Ines", run: "/work did:oil and filter bike:Heron at:12,080 mi on:last May how:receipt" },
  { as: "Ines", run: "/work did:brake fluid bike:Heron on:spring 2024 how:service book" },
  { as: "Ines", run: "/work did:tyres bike:Heron on:2022 how:seller's word" },
  { as: "Ines", run: "/bike change bike:Heron yearly:4,500 mi used:wet" },
  { as: "Ines", say: "14,390 mi on Heron, 34 psi front 38 psi rear, tread 4.5mm front 3mm rear" },
  { as: "Ines", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" },
  { as: "Ines", say: "lubed the chain on Bramble at 8,640 km" },
  { as: "Tomasz", run: "/bike add name:Kestrel kind:shaft-drive tourer odometer:61,300 km" },
  { as: "Tomasz", say: "changed the oil and filter at 61,300 km" },
  { as: "Tomasz", run: "/bike add name:Otter kind:belt-drive cruiser odometer:20,450 mi" },
];
