declare module "js-quantities" {
  export default function Qty(value: number | string, unit?: string): { to(unit: string): { scalar: number } };
}
