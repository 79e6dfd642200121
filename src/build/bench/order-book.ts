/** An orders table for timing: every other order takes a second variety too. */
export function orderBook(orders: number, wantedEach: number, asOf: Date): unknown[][] {
  const names = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];
  const name = (index: number) => names[index % names.length] as string;
  const rows = Array.from({ length: orders }, (_, index) => {
    const variety = index % 2 === 0 ? name(index) : `${name(index)} or ${name(index + 2)}`;
    const by = new Date(asOf.getFullYear(), asOf.getMonth(), asOf.getDate() + 5 + 7 * index);
    return [`O-${index + 1}`, variety, wantedEach, by];
  });
  return [["Order", "Variety", "Wanted", "By"], ...rows];
}
