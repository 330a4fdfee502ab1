/**
 * How the reference looks: calm and print-like, light or dark as the reader's system is.
 */
export const REFERENCE_STYLE = `
:root{color-scheme:light dark;--paper:#faf7f0;--ink:#22201c;--soft:#66605a;--line:#d9d2c4;--link:#00507f}
@media(prefers-color-scheme:dark){:root{--paper:#181512;--ink:#ece6da;--soft:#aaa296;--line:#3a352e;--link:#7cc0ec}}
body{margin:0 auto;max-width:62rem;padding:1.5rem;background:var(--paper);color:var(--ink);font:1rem/1.55 Georgia,serif}
a{color:var(--link)}a:focus-visible,summary:focus-visible,pre:focus-visible{outline:2px solid;outline-offset:2px}
h1,h2,h3{line-height:1.25}h2{margin-top:3rem;border-bottom:1px solid var(--line)}
h3{margin:2rem 0 .25rem;font-size:1.05rem;overflow-wrap:anywhere}h3 b{font-size:.8em;color:var(--soft)}
h4{margin:1rem 0 .25rem;font-size:.9rem;color:var(--soft)}
code,pre{font-family:ui-monospace,Menlo,Consolas,monospace;font-size:.875em}
pre{overflow-x:auto;padding:.75rem;border:1px solid var(--line)}
p a,nav a{overflow-wrap:anywhere}summary{cursor:pointer;color:var(--soft);padding:.25rem 0}
dt{margin-top:.5rem}dd{margin-left:1.5rem}small{color:var(--soft)}
nav ul{list-style:none;padding-left:1rem}nav>ul{columns:2;padding:0}nav>ul>li{break-inside:avoid;margin-bottom:1rem}
@media(max-width:40rem){nav>ul{columns:1}}
@media print{nav{display:none}details>*{display:block}}
`;
