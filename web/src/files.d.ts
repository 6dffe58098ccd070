/** Files that the build turns into names of classes or into addresses. */
declare module "*.module.css" {
  const names: Readonly<Record<string, string>>;
  export default names;
}
declare module "*.css";
