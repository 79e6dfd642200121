import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { packMethods } from "../../src/build/pack-methods";
import { builtInMethods } from "../../src/core/timetable/built-in-methods";

async function bundled(plugins: Parameters<typeof build>[0]["plugins"] = []): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: ["src/core/timetable/built-in-methods.ts"],
    bundle: true,
    write: false,
    format: "esm",
    minify: true,
    charset: "utf8",
    plugins,
  });
  return outputFiles[0]?.text ?? "";
}

describe("the methods in the built file", () => {
  it("are those of the methods' files, in less room", async () => {
    const packed = await bundled([packMethods]);
    expect(Buffer.byteLength(packed)).toBeLessThan(Buffer.byteLength(await bundled()) * 0.85);
    const module: unknown = await import(`data:text/javascript,${encodeURIComponent(packed)}`);
    const { builtInMethods: built } = module as { readonly builtInMethods: typeof builtInMethods };
    expect(built).toEqual(builtInMethods);
  });
});
