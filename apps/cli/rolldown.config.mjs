/** The command as a few files with all they need inside: it starts in a third of the time that hundreds of modules take. */
export default {
  input: { main: 'src/main.ts', 'answer-worker': 'src/internal/answer-worker.ts' },
  platform: 'node',
  output: { dir: 'dist', format: 'esm', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js', cleanDir: true },
};
