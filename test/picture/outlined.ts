// The drawing thread's letters, typed for tests: the thread is plain JavaScript, which the compiler does not read here.

type Outlines = { readonly SUBSTITUTE: string; readonly outliner: (file: string) => (svg: string) => { readonly svg: string; readonly lacking: boolean } };

export const { SUBSTITUTE, outliner } = (await import(new URL("../../src/picture/outlines.js", import.meta.url).href)) as Outlines;
