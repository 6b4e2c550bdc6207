/** Tables of printed and computed values: narrow enough for a phone, small on paper. */
export const evidenceStyle = `
.proofs tbody th{overflow-wrap:anywhere}
.proofs thead th,.proofs td{overflow-wrap:normal}
@media (max-width:40rem){
.proofs{font-size:.78rem}
.proofs th,.proofs td{padding:.22rem .25rem}
}
@media print{
.proofs{font-size:7pt}
.proofs th,.proofs td{padding:.3mm 1mm}
}
`;
