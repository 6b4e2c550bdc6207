/** Narrow drawings, and what stands beside them; for sheets, card and ladder. */
export const holdStyle = `
.slim svg{min-width:0;width:100%;max-width:24rem;font-size:13px}
svg .w{font-weight:700}
svg .u{fill:none;stroke-width:6}
svg .t{stroke-width:3;stroke-dasharray:2 2}
.rungs tbody th{white-space:nowrap}
.anchors{min-width:56rem}
.proof{min-width:44rem}
.pair{display:grid;grid-template-columns:minmax(0,24rem) minmax(0,1fr);gap:0 1.5rem;align-items:start}
@media (max-width:50rem){.pair{display:block}}
@media print{
.slim svg{max-width:80mm;max-height:110mm}
.anchors{font-size:7pt;min-width:0}
.proof{font-size:7pt;min-width:0}
}
`;
