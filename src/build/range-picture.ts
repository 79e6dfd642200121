/** One line of a picture: a range with its likely value. */
export interface RangeLine {
  readonly label: string;
  readonly from: number;
  readonly likely: number;
  readonly to: number;
}

export interface RangePicture {
  readonly title: string;
  readonly axis: string;
  readonly lines: readonly RangeLine[];
  /** How a value is written at the axis and beside a range. */
  readonly say: (value: number) => string;
}

const WIDTH = 640;
const LEFT = 210;
const RIGHT = 40;
const LINE_HEIGHT = 44;
const TOP = 52;

/** Ranges drawn as bars with a tick at the likely value, as SVG text; every number is also written. */
export function rangePicture({ title, axis, lines, say }: RangePicture): string {
  const least = Math.min(...lines.map(({ from }) => from));
  const most = Math.max(...lines.map(({ to }) => to));
  const margin = (most - least) * 0.08 || 1;
  const x = (value: number) =>
    LEFT + ((value - (least - margin)) / (most - least + 2 * margin)) * (WIDTH - LEFT - RIGHT);
  const height = TOP + lines.length * LINE_HEIGHT + 34;
  const rows = lines.map(({ label, from, likely, to }, index) => {
    const y = TOP + index * LINE_HEIGHT + 14;
    return [
      `<text x="12" y="${y + 5}">${escapeText(label)}</text>`,
      `<rect x="${x(from).toFixed(1)}" y="${y - 7}" width="${(x(to) - x(from)).toFixed(1)}" height="14" rx="3" fill="#b9c7bd"/>`,
      `<line x1="${x(likely).toFixed(1)}" x2="${x(likely).toFixed(1)}" y1="${y - 11}" y2="${y + 11}" stroke="#20382c" stroke-width="3"/>`,
      `<text x="${((x(from) + x(to)) / 2).toFixed(1)}" y="${y + 24}" text-anchor="middle" font-size="11">${escapeText(`${say(from)} – ${say(likely)} – ${say(to)}`)}</text>`,
    ].join("\n");
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" font-family="Arial, sans-serif" font-size="13" fill="#1b1b1b" role="img" aria-label="${escapeText(title)}">`,
    `<rect width="${WIDTH}" height="${height}" fill="#ffffff"/>`,
    `<text x="12" y="24" font-size="15" font-weight="bold">${escapeText(title)}</text>`,
    ...rows,
    `<text x="${WIDTH - RIGHT}" y="${height - 10}" text-anchor="end" font-size="11">${escapeText(axis)}</text>`,
    "</svg>",
    "",
  ].join("\n");
}

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
}
