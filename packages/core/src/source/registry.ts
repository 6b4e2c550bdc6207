/**
 * The closed list of sources. A citation of anything else does not typecheck, and the report's
 * bibliography prints what was used. `seen` tells how the project knows the document as a whole;
 * every single number carries its own grade beside it.
 */
export const sources = {
  "asce-7-16": {
    title: "Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
    edition: "ASCE/SEI 7-16",
    publisher: "American Society of Civil Engineers",
  },
  "asce-7-22": {
    title: "Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
    edition: "ASCE/SEI 7-22",
    publisher: "American Society of Civil Engineers",
  },
  "asce-7-10": {
    title: "Minimum Design Loads for Buildings and Other Structures",
    edition: "ASCE/SEI 7-10",
    publisher: "American Society of Civil Engineers",
  },
  "bnbc-2020": {
    title:
      "Bangladesh National Building Code, Part 6 Chapter 2 (reprints the ASCE 7-05 wind tables)",
    edition: "2020",
    publisher: "Housing and Building Research Institute, Dhaka",
  },
  "ibc-2012": {
    title: "International Building Code",
    edition: "2012",
    publisher: "International Code Council",
  },
  "en-1991-1-4": {
    title: "Eurocode 1: Actions on structures, Part 1-4: Wind actions",
    edition: "EN 1991-1-4:2005+A1:2010",
    publisher: "European Committee for Standardization",
  },
  "en-10219-2": {
    title: "Cold formed welded structural hollow sections: tolerances, dimensions, properties",
    edition: "EN 10219-2:2006",
    publisher: "European Committee for Standardization",
  },
  "en-10210-2": {
    title: "Hot finished structural hollow sections: tolerances, dimensions, properties",
    edition: "EN 10210-2:2006",
    publisher: "European Committee for Standardization",
  },
  "aisc-360-22": {
    title: "Specification for Structural Steel Buildings",
    edition: "ANSI/AISC 360-22",
    publisher: "American Institute of Steel Construction",
  },
  "aisc-shapes-15": {
    title: "Shapes Database (for the 15th edition Manual)",
    edition: "v15.0, 2017",
    publisher: "American Institute of Steel Construction",
  },
  "astm-a500": {
    title: "Cold-Formed Welded and Seamless Carbon Steel Structural Tubing",
    edition: "ASTM A500/A500M-21",
    publisher: "ASTM International",
  },
  "astm-a123": {
    title: "Zinc (Hot-Dip Galvanized) Coatings on Iron and Steel Products, Table 1",
    edition: "ASTM A123/A123M-24",
    publisher: "ASTM International",
  },
  "asme-b36-10": {
    title: "Welded and Seamless Wrought Steel Pipe",
    edition: "ASME B36.10M-2018",
    publisher: "American Society of Mechanical Engineers",
  },
  holtzapffel: {
    title: "Birmingham wire gauge after Holtzapffel, as reprinted in Building Construction",
    edition: "reprint",
    publisher: "public reprint",
  },
  "sheet-gauge-table": {
    title: "Sheet gauge table, steel and galvanized",
    edition: "2010",
    publisher: "public reprint of the Manufacturers' Standard table",
  },
  "15-usc-206": {
    title: "United States Code, Title 15, section 206: standard gauge for sheet and plate",
    edition: "as in force",
    publisher: "United States Congress",
  },
  "24-cfr-3285": {
    title: "Model Manufactured Home Installation Standards, section 3285.202",
    edition: "Code of Federal Regulations, Title 24",
    publisher: "US Department of Housing and Urban Development",
  },
  "navfac-dm-7.02": {
    title: "Foundations and Earth Structures, Design Manual 7.02, table 1 of chapter 3",
    edition: "1986",
    publisher: "Naval Facilities Engineering Command",
  },
  "wood-handbook": {
    title: "Wood Handbook, chapter 4, density equation",
    edition: "FPL-GTR-190, 2010",
    publisher: "USDA Forest Products Laboratory",
  },
  "hud-densities": {
    title:
      "Table of densities of building materials (as in the Residential Structural Design Guide)",
    edition: "reprint",
    publisher: "public reprint",
  },
  "salvage-handbook": {
    title: "Salvage engineer's handbook, table E-1 (water)",
    edition: "US Navy",
    publisher: "Naval Sea Systems Command",
  },
  statics: {
    title:
      "Elementary statics and geometry, derived in the design notes and tested against integration",
    edition: "derived",
    publisher: "hoopstay",
  },
  judgement: {
    title: "Engineering judgement, printed with its reason and direction",
    edition: "this program",
    publisher: "hoopstay",
  },
  "common-practice": {
    title: "Common practice of the trade; no published source",
    edition: "no source",
    publisher: "none",
  },
  "uk-section-lists": {
    title:
      "Section property lists of hollow sections to EN 10219 and EN 10210 (CFSHS, CFCHS, HFSHS, HFCHS)",
    edition: "open data files, undated",
    publisher: "public data files of the UK section tables",
  },
  "astm-a53": {
    title: "Pipe, Steel, Black and Hot-Dipped, Zinc-Coated, Welded and Seamless",
    edition: "ASTM A53/A53M-20",
    publisher: "ASTM International",
  },
  "astm-a6": {
    title:
      "General Requirements for Rolled Structural Steel Bars, Plates, Shapes, and Sheet Piling",
    edition: "ASTM A6/A6M-19",
    publisher: "ASTM International",
  },
  "astm-a513": {
    title: "Electric-Resistance-Welded Carbon and Alloy Steel Mechanical Tubing, type 1",
    edition: "ASTM A513/A513M, edition not stated",
    publisher: "ASTM International",
  },
  "roark-7": {
    title: "Roark's Formulas for Stress and Strain, table 10.1",
    edition: "7th edition, 2002",
    publisher: "McGraw-Hill",
  },
  "timoshenko-goodier-3": {
    title: "Theory of Elasticity, torsion of a rectangular bar",
    edition: "3rd edition, 1970",
    publisher: "McGraw-Hill",
  },
  "crc-handbook": {
    title: "CRC Handbook of Chemistry and Physics, physical constants of inorganic compounds",
    edition: "97th edition, 2016",
    publisher: "CRC Press",
  },
  "nist-sp-811": {
    title: "Guide for the Use of the International System of Units, appendix B",
    edition: "2008",
    publisher: "National Institute of Standards and Technology",
  },
} as const satisfies Record<string, SourceEntry>;

interface SourceEntry {
  readonly title: string;
  readonly edition: string;
  readonly publisher: string;
}

export type SourceId = keyof typeof sources;
