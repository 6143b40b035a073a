declare module "js-quantities" {
  export default function Qty(value: number, unit: string): { to(unit: string): { scalar: number } };
}
