export function RegradeScreen() {
  return <div />;
}
