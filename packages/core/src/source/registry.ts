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
  "asce-7-05": {
    title: "Minimum Design Loads for Buildings and Other Structures",
    edition: "ASCE/SEI 7-05",
    publisher: "American Society of Civil Engineers",
  },
  "asce-7-guide": {
    title: "Guide to the Use of the Wind Load Provisions of ASCE 7",
    edition: "editions for 7-02 and 7-05",
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
  "en-1993-1-1": {
    title: "Eurocode 3: Design of steel structures, Part 1-1: General rules",
    edition: "EN 1993-1-1:2005",
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
  "us-wind-words": {
    title: "Criteria of wind advisory and high wind warning; offices differ",
    edition: "page and date not recorded",
    publisher: "US National Weather Service offices",
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
  "das-earth-anchors": {
    title:
      "Earth Anchors; and Principles of Foundation Engineering, uplift of plates and helical anchors (prints Meyerhof and Adams 1968)",
    edition: "editions not recorded",
    publisher: "J. Ross; Cengage",
  },
  niroumand: {
    title: "Soil Reinforcement for Anchor Plates and Uplift Response, appendix G",
    edition: "publisher's excerpt",
    publisher: "Butterworth-Heinemann",
  },
  "vesic-1971": {
    title: "Breakout Resistance of Objects Embedded in Ocean Bottom",
    edition: "J. Soil Mech. Found. Div. 97 (SM9), 1971",
    publisher: "American Society of Civil Engineers",
  },
  "meyerhof-1973": {
    title: "Uplift Resistance of Inclined Anchors and Piles",
    edition: "8th ICSMFE, Moscow, 1973",
    publisher: "International Society for Soil Mechanics",
  },
  "broms-1964": {
    title: "Lateral Resistance of Piles in Cohesive Soils; in Cohesionless Soils",
    edition: "J. Soil Mech. Found. Div. 90 (SM2, SM3), 1964",
    publisher: "American Society of Civil Engineers",
  },
  "terzaghi-peck": {
    title: "Soil Mechanics in Engineering Practice, consistency of clay",
    edition: "2nd edition, 1967",
    publisher: "Wiley",
  },
  "em-1110-2-2504": {
    title: "Design of Sheet Pile Walls, table 3-1 (after Teng)",
    edition: "EM 1110-2-2504, 1994",
    publisher: "US Army Corps of Engineers",
  },
  "navedtra-14251": {
    title: "Construction manual, holdfasts",
    edition: "NAVEDTRA 14251",
    publisher: "US Navy",
  },
  "tm-5-5420-278-10": {
    title: "Operator's manual, table 9: holding power of deadmen in loamy soil",
    edition: "TM 5-5420-278-10",
    publisher: "US Army",
  },
  "fm-5-125": {
    title: "Rigging Techniques, Procedures, and Applications, chapter 4",
    edition: "FM 5-125, 1995",
    publisher: "US Army",
  },
  "staking-study": {
    title: "Tent-industry staking study, as reported in the trade press",
    edition: "2009",
    publisher: "trade press",
  },
  "fema-p-85": {
    title: "Protecting Manufactured Homes from Floods and Other Hazards, chapter 7",
    edition: "2nd edition, 2009",
    publisher: "Federal Emergency Management Agency",
  },
  "ill-77-870": {
    title: "Illinois Administrative Code, Title 77, part 870: Manufactured Home Installation Code",
    edition: "as in force",
    publisher: "State of Illinois",
  },
  "minn-1350": {
    title: "Minnesota Rules, part 1350.2900: anchoring equipment",
    edition: "as in force",
    publisher: "State of Minnesota",
  },
  "la-51-912": {
    title: "Louisiana Revised Statutes 51:912.25: tie-down of manufactured homes",
    edition: "as in force",
    publisher: "State of Louisiana",
  },
  "manuwa-afolabi-2007": {
    title: "Soil-material sliding friction of sandy clay loam over a range of moisture",
    edition: "2007",
    publisher: "Manuwa and Afolabi",
  },
  gunaratne: {
    title: "The Foundation Engineering Handbook, table 2.2",
    edition: "edition not recorded",
    publisher: "CRC Press",
  },
  "en-1990": {
    title: "Eurocode: Basis of structural design, annex D: design assisted by testing",
    edition: "EN 1990:2002",
    publisher: "European Committee for Standardization",
  },
  "en-1997-1": {
    title: "Eurocode 7: Geotechnical design, Part 1: General rules",
    edition: "EN 1997-1:2004",
    publisher: "European Committee for Standardization",
  },
  "en-1997-1-uk-na": {
    title: "UK National Annex to Eurocode 7, Part 1",
    edition: "NA to BS EN 1997-1:2004",
    publisher: "British Standards Institution",
  },
  "en-1537": {
    title: "Execution of special geotechnical work: Ground anchors",
    edition: "EN 1537:1999",
    publisher: "European Committee for Standardization",
  },
  "caltrans-ssp-46": {
    title: "Special provisions, section 46: ground anchors and soil nails",
    edition: "SSP 46-2.01D, undated",
    publisher: "California Department of Transportation",
  },
  "asabe-d497": {
    title: "Agricultural Machinery Management Data",
    edition: "ASABE D497, edition not recorded",
    publisher: "American Society of Agricultural and Biological Engineers",
  },
  "farm-sled-tests": {
    title: "Tests of the draft of farm sleds on grass, pasture and hay ground",
    edition: "not recorded in the design notes",
    publisher: "agricultural extension",
  },
  "cpuc-go-95": {
    title: "Rules for Overhead Electric Line Construction, rule 48.5",
    edition: "General Order 95",
    publisher: "California Public Utilities Commission",
  },
  "nist-handbook": {
    title: "NIST/SEMATECH e-Handbook of Statistical Methods",
    edition: "web edition",
    publisher: "National Institute of Standards and Technology",
  },
  "aisc-360-16": {
    title: "Specification for Structural Steel Buildings",
    edition: "ANSI/AISC 360-16",
    publisher: "American Institute of Steel Construction",
  },
  "aisc-manual-15": {
    title: "Steel Construction Manual, table 4-14: available critical stress in compression",
    edition: "15th edition, 2017",
    publisher: "American Institute of Steel Construction",
  },
  "aisc-design-examples": {
    title: "Companion to the Steel Construction Manual: Design Examples, chapters D to J",
    edition: "version 14, sections and strengths as of 360-10",
    publisher: "American Institute of Steel Construction",
  },
  "mccormac-5": {
    title: "Structural Steel Design, problem 5-3, as solved on a public page",
    edition: "5th edition",
    publisher: "Pearson",
  },
  quimby: {
    title: "A Beginner's Guide to the Steel Construction Manual, examples",
    edition: "web edition, AISC 360-05",
    publisher: "T. B. Quimby",
  },
  "steel-buildings-europe": {
    title: "Steel Buildings in Europe, Multi-storey steel buildings, worked example A.5",
    edition: "Part 4, page 105",
    publisher: "public project of the European steel industry",
  },
  "astm-a500-old": {
    title:
      "Cold-Formed Welded and Seamless Carbon Steel Structural Tubing, round and shaped tube apart",
    edition: "before ASTM A500/A500M-21, as in a public copy of its table",
    publisher: "ASTM International",
  },
  "astm-a1085": {
    title: "Cold-Formed Welded Carbon Steel Hollow Structural Sections",
    edition: "ASTM A1085/A1085M, edition not stated",
    publisher: "ASTM International",
  },
  "astm-a1065": {
    title:
      "Cold-Formed Electric-Fusion (Arc) Welded High-Strength Low-Alloy Structural Tubing in Shapes",
    edition: "ASTM A1065/A1065M, edition not stated",
    publisher: "ASTM International",
  },
  "astm-a36": {
    title: "Carbon Structural Steel",
    edition: "ASTM A36/A36M, edition not stated",
    publisher: "ASTM International",
  },
  "en-10219-1": {
    title: "Cold formed welded structural hollow sections: technical delivery conditions",
    edition: "EN 10219-1:2006",
    publisher: "European Committee for Standardization",
  },
  "en-10210-1": {
    title: "Hot finished structural hollow sections: technical delivery conditions",
    edition: "EN 10210-1:2006",
    publisher: "European Committee for Standardization",
  },
  "nds-2018": {
    title: "National Design Specification for Wood Construction",
    edition: "NDS 2018",
    publisher: "American Wood Council",
  },
  "nds-supplement-2018": {
    title: "National Design Specification, Supplement: Design Values for Wood Construction",
    edition: "NDS Supplement 2018",
    publisher: "American Wood Council",
  },
  "apa-d510": {
    title: "Panel Design Specification",
    edition: "Form D510C, 2012",
    publisher: "APA - The Engineered Wood Association",
  },
  "aisc-360-10": {
    title: "Specification for Structural Steel Buildings, tables of chapter K",
    edition: "ANSI/AISC 360-10",
    publisher: "American Institute of Steel Construction",
  },
  "en-1993-1-8": {
    title: "Eurocode 3: Design of steel structures, Part 1-8: Design of joints",
    edition: "EN 1993-1-8:2005, tables of hollow sections as extracted from its draft revision",
    publisher: "European Committee for Standardization",
  },
  "aisi-s100": {
    title: "North American Specification for the Design of Cold-Formed Steel Structural Members",
    edition: "AISI S100-16; numbers of AISI 2001 as quoted in an engineers' mailing list, 2004",
    publisher: "American Iron and Steel Institute",
  },
  "sae-j429": {
    title: "Mechanical and Material Requirements for Externally Threaded Fasteners",
    edition: "SAE J429, edition not recorded",
    publisher: "SAE International",
  },
  "shigley-mischke-5": {
    title: "Mechanical Engineering Design, bolt tables, as quoted on a university's class page",
    edition: "5th edition",
    publisher: "McGraw-Hill",
  },
  "iso-898-1": {
    title: "Mechanical properties of fasteners: bolts, screws and studs",
    edition: "ISO 898-1, edition not recorded",
    publisher: "International Organization for Standardization",
  },
  "asme-b1-1": {
    title: "Unified Inch Screw Threads",
    edition: "ASME B1.1, as printed in a public fastener table",
    publisher: "American Society of Mechanical Engineers",
  },
  "timoshenko-gere-2": {
    title: "Theory of Elastic Stability, uniformly compressed circular arches",
    edition: "2nd edition, 1961",
    publisher: "McGraw-Hill",
  },
  "chvatal-1983": {
    title: "Linear Programming, the cutting-stock problem",
    edition: "1983",
    publisher: "W. H. Freeman",
  },
  "johnson-1974": {
    title: "Worst-case performance bounds for simple one-dimensional packing algorithms",
    edition: "SIAM Journal on Computing 3, 1974",
    publisher: "Society for Industrial and Applied Mathematics",
  },
  "paper-machine-rolls": {
    title: "Cutting stock problem, the example of a paper machine in a public encyclopedia",
    edition: "edition not recorded",
    publisher: "public page",
  },
} as const satisfies Record<string, SourceEntry>;

interface SourceEntry {
  readonly title: string;
  readonly edition: string;
  readonly publisher: string;
}

export type SourceId = keyof typeof sources;
