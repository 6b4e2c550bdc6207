/** The chain, its drawings, the comparison and the search; beside the style of the other sheets. */
export const chainStyle = `
.chain svg .n{fill:var(--paper);font-weight:700}
svg .tube{stroke-width:16}
svg .bore{stroke-width:12.5;stroke:var(--paper)}
svg .tube.thin{stroke-width:9}
svg .bore.thin{stroke-width:6}
svg .film{stroke-width:2.6;stroke:var(--soft)}
svg .torn{stroke-width:2.8}
svg .lobe{fill:var(--tint)}
svg .tie{stroke-width:3}
.row{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(23rem,100%),1fr));gap:0 1.2rem;align-items:start}
.matrix{min-width:52rem}
.matrix thead th,.checks{font-size:.82rem}
.checks{min-width:54rem}
.checks th[colspan]{font-weight:700;background:var(--tint)}
.small{grid-template-columns:repeat(auto-fit,minmax(min(15rem,100%),1fr))}
.small .slim svg{max-width:19rem}
.plot.slim svg{max-width:33rem}
.big{font-size:2rem;line-height:1.1}
.side{min-width:34rem}
.side tbody th[scope=row]{position:sticky;left:0;background:var(--paper);min-width:6.5rem}
.side th[colspan]{font-weight:700;background:var(--tint)}
.side td{min-width:6.1rem}
.side code{overflow-wrap:anywhere}
.side th,.side td{padding:.28rem .4rem}
.stay{position:sticky;left:.4rem;display:inline-block;max-width:calc(100vw - 3rem)}
.says{font-size:1.15rem}
.cut{display:grid;grid-template-columns:minmax(0,24rem) minmax(0,1fr);gap:0 1.5rem;align-items:start}
.cut ul{grid-column:1/-1;margin-top:0}
svg .dots{stroke:var(--soft);stroke-width:2.4;stroke-linecap:round}
@media (max-width:50rem){.cut{display:block}}
@media screen and (min-width:50rem){.beside>.chain{position:sticky;top:0}}
@media print{
.small{grid-template-columns:repeat(3,minmax(0,1fr))!important}
.side{font-size:7.2pt;min-width:0}
.side small{font-size:.93em}
.side td,.side tbody th[scope=row]{min-width:0;position:static}
.big{font-size:16pt}
tr:has(>th[colspan]){break-after:avoid}
.plot.slim svg{max-width:150mm;max-height:104mm}
.says{font-size:10pt}
.cut{display:grid;grid-template-columns:80mm minmax(0,1fr);gap:0 4mm;break-inside:avoid}
.chain svg{max-height:135mm}
.beside{display:grid;grid-template-columns:86mm minmax(0,1fr);gap:0 4mm}
.beside .slim svg{max-width:86mm}
.beside .plain{font-size:8pt}
.row{grid-template-columns:repeat(2,minmax(0,1fr))}
.row .slim svg{max-height:80mm}
.matrix,.checks{min-width:0;font-size:7pt}
.matrix thead th{font-size:6.5pt}
}
`;
