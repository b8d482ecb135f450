/** Which class stands behind which tag is told by `defineElement`; what is published lies in `dist`. */
const definitions = {
  name: 'definitions',
  analyzePhase({ ts, node, moduleDoc }) {
    if (!ts.isCallExpression(node) || node.expression.getText() !== 'defineElement') return;
    const [tag, element] = node.arguments;
    if (tag === undefined || element === undefined || !ts.isStringLiteral(tag)) return;
    moduleDoc.exports = [...(moduleDoc.exports ?? []), { kind: 'custom-element-definition', name: tag.text, declaration: { name: element.getText(), module: moduleDoc.path.replace('.define.ts', '.ts') } }];
  },
  packageLinkPhase({ customElementsManifest }) {
    const { modules } = customElementsManifest;
    for (const each of modules) {
      // The helper itself names no tag.
      each.exports = (each.exports ?? []).filter(({ kind, name }) => kind !== 'custom-element-definition' || name.includes('-'));
      for (const { kind, name, declaration } of each.exports) {
        if (kind !== 'custom-element-definition') continue;
        const found = modules.find(({ path }) => path === declaration.module)?.declarations?.find((each) => each.name === declaration.name);
        if (found === undefined) throw new Error(`<${name}> is defined by ${declaration.name}, which is not in ${declaration.module}`);
        Object.assign(found, { tagName: name, customElement: true });
      }
    }
    const published = (path) => path?.replace(/^src\//, 'dist/').replace(/\.ts$/, '.js');
    for (const each of modules) {
      each.path = published(each.path);
      for (const { declaration } of each.exports ?? []) if (declaration.module !== undefined) declaration.module = published(declaration.module);
      for (const declaration of each.declarations ?? []) {
        if (declaration.superclass?.module !== undefined) declaration.superclass.module = published(declaration.superclass.module);
        declaration.members = declaration.members?.filter(({ privacy, name }) => privacy !== 'private' && privacy !== 'protected' && name !== 'styles');
        for (const list of [declaration.members, declaration.attributes]) for (const member of list ?? []) if (member.inheritedFrom?.module !== undefined) member.inheritedFrom.module = published(member.inheritedFrom.module);
      }
    }
    customElementsManifest.modules = modules.filter(({ declarations = [], exports = [] }) => declarations.some(({ customElement }) => customElement) || exports.some(({ kind }) => kind === 'custom-element-definition'));
  },
};

export default { globs: ['src/*/*.ts', 'src/internal/*.ts', 'src/internal/chart/*.ts'], exclude: ['src/**/*.test.ts', 'src/**/*.styles.ts'], litelement: true, outdir: '.', packagejson: false, plugins: [definitions] };
