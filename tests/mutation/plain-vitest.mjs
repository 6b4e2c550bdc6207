import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
chai.config.useProxy = false;
chai.config.includeStack = false;

const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, writable: true });

/** What the tests use of vitest, without its runner: `collected` takes each test's name and body. */
export function plainVitest(collected) {
  const groups = [];
  const test = (name, body) => {
    collected.push({ name: [...groups, name].join(" > "), body });
  };
  const describe = (name, body) => {
    groups.push(name);
    body();
    groups.pop();
  };
  for (const each of [test, describe]) {
    each.each = (cases) => (name, body) => {
      for (const [place, one] of cases.entries()) {
        each(`${name} #${place + 1}`, () => body(...(Array.isArray(one) ? one : [one])));
      }
    };
  }
  return { describe, test, it: test, expect };
}
