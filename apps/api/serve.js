/**
 * Starts the server with code that was compiled at an earlier start, where there was one: in half the time
 * and with less memory. Plain JavaScript, since it runs before that is looked up.
 */
import { enableCompileCache } from 'node:module';

enableCompileCache();
await import('./src/main.ts');
