import { expect, test } from 'vitest';
import { withCode, withoutCode } from './with-code.ts';

test.each([
  ['`errors` names it', '<code>errors</code> names it', 'errors names it'],
  ['`a < b` & `c`', '<code>a &lt; b</code> &amp; <code>c</code>', 'a < b & c'],
  ['a lone ` stays', 'a lone ` stays', 'a lone ` stays'],
])('%s', (text, html, plain) => {
  expect(withCode(text)).toBe(html);
  expect(withoutCode(text)).toBe(plain);
});
