import { type LinkNotChecked, measured, type Words } from "@hoopstay/core";
import { bentAtMost, bentHoopStrength, bentWork, worstBent } from "../along/bent-hoops.ts";
import { braceRows } from "../along/brace-rows.ts";
import { bracedBays } from "../along/braced-bays.ts";
import { alongFaceRows } from "../along/face-rows.ts";
import { alongFootRows } from "../along/foot-rows.ts";
import { hoopsAlong } from "../along/hoop-along.ts";
import { purlinRows } from "../along/purlin-rows.ts";
import { type PushedHoop, pushedHoops } from "../along/pushed-hoops.ts";
import { alongRailRows } from "../along/rail-rows.ts";
import type { ChainContext } from "../context.ts";
import { designWind } from "../demand.ts";
import { factorsOf } from "../hoop/foot-forces.ts";
import { hoopWords } from "../hoop/hoop-answers.ts";
import { type LinkMaker, type LinkRow, type LinkRows, ratioRow } from "../link.ts";
import { footSleeve } from "./bolts.ts";
import { whileTied } from "./ties.ts";
import { footWeld } from "./weld.ts";

/** Hoops without a braced end bay: they bend along the house from their stubs, all together. */
function unbraced(context: ChainContext): LinkRows {
  const pushed = pushedHoops(context);
  const rows = [
    ...hoopRows(context, pushed),
    ...alongFootRows(context, pushed),
    ...alongFaceRows(context, pushed),
    ...alongRailRows(context, pushed),
  ];
  return {
    rows,
    notChecked: notBent(context, pushed),
    findings: unbracedFindings(context, pushed),
  };
}

/** What of hoops bent along the house is not computed. */
function notBent(context: ChainContext, pushed: readonly PushedHoop[]): LinkNotChecked[] {
  const { house } = context.evaluation;
  const told: LinkNotChecked[] = [];
  const add = (words: string, why: string, demand: LinkNotChecked["demand"] = null): void => {
    told.push({ link: "ridge-line", words, why, demand });
  };
  add(
    "feet that turn about their upright when hoops are pushed along the house",
    "taken as held by weld and bolts; play in the bolts lets the crown bend more",
  );
  if (!bentHoopStrength(context)) {
    const why = "the standard gives no strength for this tube bent and twisted at once";
    add("hoops bent along the house", why);
  }
  const unknown = [
    ...(footSleeve(house)?.covered ? [] : ["bolts"]),
    ...(footWeld(house) ? [] : ["weld"]),
  ];
  if (unknown.length > 0 && pushed.length > 0) {
    const most = Math.max(...pushed.map(({ demand }) => demand.tipping));
    add(
      `${unknown.join(" and ")} of a foot, pushed along the house`,
      "not known, see there; this couple along the rail comes on top of what the hoop asks",
      measured(designWind(context) * most, "moment"),
    );
  }
  return told;
}

function hoopRows(context: ChainContext, pushed: readonly PushedHoop[]): LinkRow[] {
  const strength = bentHoopStrength(context);
  if (!strength) return [];
  const { hoopPlaces } = context;
  return pushed.map(({ answer, sets, demand, sharing }) => {
    const { run, windCase } = answer;
    const { railed } = run;
    const load = { demand, hoops: sharing.hoops, local: 0, workLocal: null };
    const row = ratioRow(
      {
        link: "ridge-line",
        part: "hoop bent along the house",
        place: hoopWords(answer, hoopPlaces.length, railed),
        run: `${sharing.words}; ${run.words}`,
        windCase: { ...windCase, sets },
        work: bentWork(context, answer, strength, load),
        atMost: bentAtMost(context, answer, strength, load),
      },
      (q, combination) => {
        const factors = factorsOf(context, answer, q, combination);
        return worstBent(answer, strength, factors, combination.method, load).ratio;
      },
    );
    return whileTied(context, answer, row);
  });
}

/** What it means that nothing braces the end bays, and the bound of an end hoop alone. */
function unbracedFindings(context: ChainContext, pushed: readonly PushedHoop[]): Words[] {
  const { byPurlins } = hoopsAlong(context);
  if (!byPurlins) {
    return [
      [
        "No ridge and no purlins: each end hoop alone carries the upper half of its end wall, bent along the house from its stubs.",
      ],
    ];
  }
  const wall = Math.max(
    0,
    ...pushed.map(({ push }) => Math.max(Math.abs(push.front), Math.abs(push.back))),
  );
  const { evaluation } = context;
  const alone = (evaluation.pressure * wall) / 2;
  return [
    [
      "No braced end bay: all hoops share the push along the house and bend from their stubs. An end hoop alone (a bound) would carry ",
      measured(alone, "force"),
      " at the design wind, not factored.",
    ],
  ];
}

/** Along the ridge: purlins and ridge, end-bay braces, or hoops that bend along the house. */
export const ridgeLineLink: LinkMaker = (context) => {
  const { lines } = hoopsAlong(context);
  const braced = bracedBays(context.evaluation.house);
  const made: LinkRows[] = [
    purlinRows(
      context,
      "ridge",
      lines.filter(({ what }) => what === "ridge"),
    ),
    purlinRows(
      context,
      "purlin",
      lines.filter(({ what }) => what === "purlin"),
    ),
  ];
  if (braced === null || typeof braced === "string") made.push(unbraced(context));
  else made.push(braceRows(context, braced));
  const findings: Words[] = made.flatMap((one) => one.findings);
  if (typeof braced === "string") findings.push([braced]);
  if (lines.length > 1) {
    findings.push(["Ridge and purlins are taken as evenly spaced along the hoop."]);
  }
  return {
    rows: made.flatMap(({ rows }) => rows),
    notChecked: made.flatMap(({ notChecked }) => notChecked),
    findings,
  };
};
