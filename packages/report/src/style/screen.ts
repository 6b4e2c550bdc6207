/** Columns of numbers are aligned by place, so that five hundred rows need no classes. */
const numericColumns = Array.from(
  { length: 20 },
  (_, place) => `.n${place + 1} tr>:nth-child(${place + 1}):not([colspan])`,
).join(",");

/** The look on a screen, and what paper shares with it. */
export const screenStyle = `
:root{--ink:#1a1a1a;--soft:#555;--rule:#b5b5b5;--paper:#fff;--tint:#f1f1ee;--accent:#8a1c00;color-scheme:light dark}
@media screen and (prefers-color-scheme:dark){:root{--ink:#ececec;--soft:#b8b8b8;--rule:#666;--paper:#171717;--tint:#262626;--accent:#ffab91}.warning{background:#ececec!important;color:#171717!important}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:400 1rem/1.45 system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",Arial,sans-serif;font-variant-numeric:tabular-nums lining-nums;overflow-wrap:anywhere}
b,th,h1,h2,h3{font-weight:700}
a{color:var(--accent)}
:focus-visible{outline:3px solid var(--accent);outline-offset:1px}
.skip{position:absolute;left:-100vw}
.skip:focus{left:0;top:0;background:var(--paper);padding:.5rem;z-index:2}
.warning{margin:0;padding:.7rem 1rem;background:#1a1a1a;color:#fff;text-align:center;font-size:1.15rem;border-bottom:4px solid var(--accent)}
h1,main{max-width:60rem;margin:0 auto;padding:0 1rem}
h1{font-size:1.5rem;padding-top:1rem}
h2{font-size:1.3rem;margin:.4rem 0 .8rem}
h3{font-size:1.05rem;margin:1.4rem 0 .4rem}
.sheet{margin:1.2rem 0 3rem}
.head{margin:0;padding:.35rem 0;border-top:2px solid var(--ink);border-bottom:1px solid var(--rule);font-size:.8rem;color:var(--soft)}
.head b{color:var(--ink)}
.verdict{margin:.4rem 0}
.verdict b{border:2px solid var(--ink);padding:.1rem .5rem;margin-right:.3rem;white-space:nowrap}
.headline{font-size:1.7rem;line-height:1.25;font-weight:700;margin:.7rem 0}
ul{padding-left:1.2rem}
li{margin:.2rem 0}
.box{overflow-x:auto;margin:1rem 0}
table{border-collapse:collapse;width:100%;font-size:.88rem}
caption{text-align:left;max-width:min(58rem,calc(100vw - 2rem));position:sticky;left:0;font-weight:700;padding:.3rem 0;caption-side:top}
th,td{text-align:left;vertical-align:top;padding:.28rem .55rem;border-bottom:1px solid var(--rule);overflow-wrap:normal}
thead th{border-bottom:2px solid var(--ink);vertical-align:bottom}
tbody th{font-weight:400}
${numericColumns}{text-align:right}
.plain{font-size:1rem}
.tag,.assumed{color:var(--accent)}
.tag{white-space:nowrap;font-size:.9em}
small{font-size:.86em;color:var(--soft)}
td small{overflow-wrap:anywhere}
.steps{min-width:44rem}
.steps th{white-space:nowrap}
.steps td:nth-child(4){white-space:nowrap}
.steps td:nth-child(2){width:24%}
.steps td:nth-child(5){width:20%}
math{font-size:1.08em;math-style:normal}
.cases{font-size:.74rem;min-width:58rem}
.cases th,.cases td{padding:.1rem .3rem;border-color:var(--tint)}
.cases th[colspan]{font-weight:700;background:var(--tint);padding-top:.3rem}
code{font:inherit}
.sign{display:grid;grid-template-columns:repeat(3,1fr);gap:1rem}
.sign b,.sign span{display:block;font-size:.85rem}
.sign span{border-bottom:1px solid var(--ink);padding-top:1.5rem;color:var(--soft)}
.sign .seal{border:1px dashed var(--soft);height:5.5rem;margin-top:.7rem;padding:.2rem .4rem}
.index ol{columns:2 14rem;padding-left:1.4rem;margin:0}
figure{margin:1.2rem 0;break-inside:avoid}
figcaption{font-weight:700;font-size:.95rem}
figure .box{margin:.3rem 0}
svg{display:block;margin:0 auto;max-width:100%;min-width:36rem;height:auto;font-size:12px;fill:none;stroke:var(--ink)}
svg text{fill:var(--ink);stroke:none;text-anchor:start}
svg .m{text-anchor:middle}
svg .e{text-anchor:end}
svg .s{font-size:11px}
svg .h{paint-order:stroke;stroke:var(--paper);stroke-width:3px}
svg .g{stroke:var(--rule)}
svg .o{fill:var(--paper);stroke-width:1.6}
svg polyline.o{fill:none;stroke-width:2.4}
svg .r{fill:var(--tint)}
svg .b{fill:var(--paper);stroke-width:2.5}
svg .f{fill:var(--ink)}
svg .a{stroke-width:1.2}
svg .dim{stroke:var(--soft);stroke-width:.8}
svg .dash{stroke-dasharray:5 4}
svg .bar{fill:var(--tint);stroke:var(--rule)}
@media (max-width:40rem){
.headline{font-size:1.35rem}
.warning{font-size:1rem}
.plain{font-size:.85rem}
.plain th,.plain td{padding:.25rem .3rem}
.sign{grid-template-columns:1fr}
.tag{display:block}
}
`;
