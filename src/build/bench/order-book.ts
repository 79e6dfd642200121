/** An orders table for timing: every other order takes a second variety too. */
export function orderBook(orders: number, wantedEach: number, asOf: Date): unknown[][] {
  const names = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];
  const name = (place: number) => names[place % names.length] as string;
  const rows = Array.from({ length: orders }, (_, place) => {
    const variety = place % 2 === 0 ? name(place) : `${name(place)} or ${name(place + 2)}`;
    const by = new Date(asOf.getFullYear(), asOf.getMonth(), asOf.getDate() + 5 + 7 * place);
    return [`O-${place + 1}`, variety, wantedEach, by];
  });
  return [["Order", "Variety", "Wanted", "By"], ...rows];
}
