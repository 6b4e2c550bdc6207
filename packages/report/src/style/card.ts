/** Columns where there is room for them; what must not be missed is the widest. */
const areas =
  'grid-template:"first first" "six six" "set set" "hook shut" "buy buy" "care care"/minmax(0,2fr) minmax(0,1fr)';

/** Move card and storm ladder: large on a phone, one side of paper. Always dark on white: outdoors. */
export const cardStyle = `
:root{--ink:#111;--soft:#444;--rule:#999;--paper:#fff;--tint:#f1f1ee;--accent:#8a1c00;color-scheme:light}
@media screen and (prefers-color-scheme:dark){:root{--ink:#111;--soft:#444;--rule:#999;--paper:#fff;--tint:#f1f1ee;--accent:#8a1c00;color-scheme:light}.warning{background:#1a1a1a!important;color:#fff!important}}
h1 span{font-weight:400}
footer{max-width:60rem;margin:0 auto;padding:.5rem 1rem 1rem;font-size:.8rem;color:var(--soft)}
.part{margin:1.4rem 0}
.part h2{border-bottom:2px solid var(--ink);margin:0 0 .5rem;font-size:1.15rem}
.card .verdict{font-size:1.5rem}
.lead{margin:.6rem 0 .3rem}
dl{margin:0}
dd{margin:0}
.gusts{display:grid;grid-template-columns:repeat(3,1fr);border:2px solid var(--ink)}
.gusts div{padding:.4rem .5rem;border-left:1px solid var(--ink)}
.gusts div:first-child{border-left:0}
.gusts dd{font-size:1.9rem;line-height:1.15;font-weight:700;white-space:nowrap}
.six dl{display:grid;grid-template-columns:1fr 1fr;gap:.5rem 1.5rem}
.six dt{font-weight:700}
.ticks{list-style:none;padding:0}
.ticks li{position:relative;padding-left:1.9rem;margin:.45rem 0}
.ticks li::before,.tick{content:"";display:inline-block;width:1.1em;height:1.1em;border:2px solid var(--ink)}
.ticks li::before{position:absolute;left:.2rem;top:.1em}
.care{border:2px solid var(--ink);padding:.6rem .8rem}
.care h2{border:0}
@media (min-width:60rem){
.card main{display:grid;${areas};gap:0 1.5rem}
}
.card .first{grid-area:first}
.card .six{grid-area:six}
.card .set{grid-area:set}
.card .shut{grid-area:shut}
.card .hook{grid-area:hook}
.card .buy{grid-area:buy}
.card .care{grid-area:care}
.ladder .headline{font-size:1.2rem}
.set .box{margin-top:0}
@media (max-width:40rem){
.six dl{display:block}
.six dd{margin:0 0 .6rem}
.gusts dd{font-size:1.2rem}
.gusts div{padding:.3rem .3rem}
.set th,.set td{padding:.3rem .25rem}
}
@media print{
@page{margin:8mm}
body{font-size:8.5pt;line-height:1.2}
.warning{background:#fff!important;color:#000!important;border:1.5pt solid #000;font-size:11pt;padding:1mm}
h1,main,footer{max-width:none;padding:0}
h1{font-size:13pt;margin:1.5mm 0}
table{font-size:8pt}
th,td{padding:.35mm 1mm}
.box{overflow:visible;margin:1mm 0}
caption{max-width:none;position:static;padding:0}
tr,li,figure{break-inside:avoid}
.plain{font-size:8.5pt}
.headline{font-size:11pt;margin:1mm 0}
.pair{display:grid;grid-template-columns:70mm minmax(0,1fr);gap:0 4mm}
footer{font-size:7.5pt;padding-top:1.5mm}
.ladder .headline{font-size:9.5pt}
.ladder .plain{font-size:8pt}
.ladder ul{columns:2;column-gap:5mm;font-size:7.5pt}
p,ul{margin:.8mm 0}
}
@media print{
.card .warning{font-size:10pt;padding:.6mm}
.card h1{margin:1mm 0}
.card main{display:grid;${areas};gap:1.2mm 4mm}
.part{margin:0}
.part h2{font-size:9.5pt;margin:0 0 .5mm;border-bottom-width:1pt}
.card .verdict{font-size:13pt;margin:0;float:left}
.card .headline{margin:0;min-height:7mm;font-size:10.5pt}
.lead{clear:left;margin:.4mm 0}
.gusts div{padding:.3mm 2mm}
.gusts dd{font-size:16pt;line-height:1.05}
.six dl{grid-template-columns:repeat(3,1fr);gap:.4mm 4mm;font-size:7.5pt}
.set p{font-size:7.5pt;margin:0}
.set figure{margin:0}
.set figcaption{font-size:8pt}
.set table{font-size:8pt}
.slim svg{max-width:70mm;max-height:72mm}
.ticks li{padding-left:5mm;margin:.3mm 0}
.ticks li::before,.tick{width:1em;height:1em;border-width:1pt}
.ticks li::before{left:.5mm;top:.1em}
.hook,.shut,.buy{font-size:8pt}
.buy ul{columns:2;column-gap:5mm}
.care{padding:.6mm 2mm;border-width:1.5pt}
.care h2{margin:0}
.care ul{columns:3;column-gap:5mm;font-size:7pt;margin:0;padding-left:3mm}
.care li{margin:0}
.card footer{padding-top:.8mm}
.dense{--small:7pt}
.tight{--small:6.3pt}
.dense .six dl,.dense .set table,.dense .set p,.dense .care ul,.dense .hook,.dense .shut,.dense .buy,.tight .six dl,.tight .set table,.tight .set p,.tight .care ul,.tight .hook,.tight .shut,.tight .buy{font-size:var(--small)}
.dense .set th,.dense .set td,.tight .set th,.tight .set td{padding:.05mm .8mm}
.dense .set tbody tr,.tight .set tbody tr{line-height:1.1}
.tight .set .tick{width:.85em;height:.85em}
}
`;
