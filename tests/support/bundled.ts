import { build, type Plugin } from "esbuild";
import { expect } from "vitest";

async function bundled(entry: string, plugins: Plugin[]): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: "esm",
    minify: true,
    charset: "utf8",
    plugins,
  });
  return outputFiles[0]?.text ?? "";
}

/** What a file exports once it is bundled with a plugin that packs it, which has to save a part of its room. */
export async function packedExports(entry: string, plugin: Plugin): Promise<unknown> {
  const [packed, plain] = await Promise.all([bundled(entry, [plugin]), bundled(entry, [])]);
  expect(Buffer.byteLength(packed)).toBeLessThan(Buffer.byteLength(plain) * 0.85);
  return import(`data:text/javascript,${encodeURIComponent(packed)}`);
}
