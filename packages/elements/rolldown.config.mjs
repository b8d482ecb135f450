/** One file for pages without a build; never the default entry: whoever has a bundler imports the elements one by one. */
export default {
  input: { seatwright: 'dist/single.js' },
  platform: 'browser',
  output: { dir: 'dist-single', format: 'esm', entryFileNames: '[name].js', codeSplitting: false, minify: true, cleanDir: true },
};
