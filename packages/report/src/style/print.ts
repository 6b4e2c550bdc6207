import { cssText } from "../html/escape.ts";

/**
 * The look on A4 and Letter. The warning stands in the margin of every page, in black on white;
 * browsers without margin boxes still print it at the top and in every sheet's header line.
 */
export const printStyle = (warning: string, footer: string): string => `
@page{margin:15mm 11mm 14mm;
@top-center{content:${cssText(warning)};font:700 10pt "Liberation Sans",Arial,sans-serif;color:#000;border-bottom:1pt solid #000;width:100%}
@bottom-left{content:${cssText(footer)};font:400 7.5pt "Liberation Sans",Arial,sans-serif;color:#000;width:75%}
@bottom-right{content:"page " counter(page) " of " counter(pages);font:400 7.5pt "Liberation Sans",Arial,sans-serif;color:#000}}
@media print{
:root{--ink:#000;--soft:#333;--rule:#999;--paper:#fff;--tint:#eee;--accent:#000;color-scheme:light}
body{font-size:9.5pt;line-height:1.35}
.skip{display:none}
.warning{background:#fff;color:#000;border:2pt solid #000;font-size:13pt;padding:2mm}
h1,main{max-width:none;padding:0}
h1{font-size:14pt;margin:3mm 0}
h2{font-size:12pt}
h3{font-size:10pt}
h2,h3,figcaption,caption{break-after:avoid}
.headline{font-size:15pt}
.head{font-size:7.5pt}
.sheet{margin:0 0 6mm}
.sheet+.sheet{break-before:page}
.box{overflow:visible;margin:3mm 0}
table,.steps,.cases,svg{min-width:0}
caption{max-width:none;position:static}
table{font-size:8pt}
.plain{font-size:9pt}
th,td{padding:.6mm 1.2mm}
tr,li{break-inside:avoid}
thead{display:table-header-group}
.steps{font-size:7.5pt}
.cases{font-size:5.8pt;line-height:1.2}
.cases th,.cases td{padding:.25mm .6mm}
a{color:inherit;text-decoration:none}
svg{width:100%;max-width:172mm;max-height:112mm}
.sign{break-inside:avoid}
.sign b,.sign span,figcaption{font-size:9pt}
.sign span{padding-top:5mm}
}
`;
