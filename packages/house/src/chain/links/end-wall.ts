import type { LinkNotChecked, Words } from "@hoopstay/core";
import { bracedBays } from "../along/braced-bays.ts";
import { endHoopRows } from "../along/end-hoop-rows.ts";
import { componentGroups } from "../component/component-groups.ts";
import { leastPressureFinding } from "../component/least-pressure.ts";
import { unknownWall } from "../component/unknown-wall.ts";
import { studRows, studStrength } from "../component/wall-studs.ts";
import type { ChainContext } from "../context.ts";
import { designDemand } from "../demand.ts";
import type { LinkMaker, LinkRows } from "../link.ts";

type End = "front" | "back";

/** Studs of one end wall and what holds their ends, in the states in which it stands. */
function studsOf(context: ChainContext, end: End): LinkRows {
  const { evaluation } = context;
  const { links } = evaluation.house;
  const wall = `the ${end} end wall`;
  const studs = links.studs[end];
  if (!studs) return { rows: [], notChecked: [], findings: [] };
  const groups = componentGroups(evaluation, ({ ends }) => ends[end]);
  const strength = studStrength(studs);
  const known = strength.covered ? strength : null;
  const { bending, fixing, perPressure } = studRows(
    evaluation.shell,
    studs,
    links.doors[end],
    groups,
    known,
    wall,
  );
  const rows = [...bending];
  const notChecked: LinkNotChecked[] = [];
  if (!strength.covered) {
    const why = `${strength.reason}. ${strength.mend}`;
    const demand = designDemand(context, fixing);
    notChecked.push({ link: "end-wall", words: `studs of ${wall}`, why, demand });
  }
  if (studs.fixing !== null) rows.push(...fixing);
  else {
    notChecked.push({
      link: "end-wall",
      words: `both ends of the studs of ${wall}`,
      why: `what a fixing holds is not entered (end_walls.${end}.studs.fixing)`,
      demand: designDemand(context, fixing),
    });
  }
  const findings: Words[] = known
    ? [
        ...known.findings.map((finding): Words => [`Studs of ${wall}: ${finding}.`]),
        ...leastPressureFinding(
          `Studs of ${wall}`,
          perPressure,
          known.moment,
          evaluation.site.combination,
        ),
      ]
    : [];
  if (known && links.doors[end].length > 0) {
    findings.push([
      `Doors of ${wall} are taken in its middle, with one stud on each side that carries half of the widest.`,
    ]);
  }
  return { rows, notChecked, findings };
}

/** End walls and the end hoops that they lean on. */
export const endWallLink: LinkMaker = (context) => {
  const { evaluation } = context;
  const ends = (["front", "back"] as const).filter((end) =>
    evaluation.states.some(({ set }) => set.ends[end]),
  );
  if (ends.length === 0) return { rows: [], notChecked: [], findings: [] };
  const braced = bracedBays(evaluation.house);
  const hoops = endHoopRows(context, braced !== null && typeof braced !== "string");
  const studs = ends.map((end) => studsOf(context, end));
  const notChecked = [...studs.flatMap((one) => one.notChecked), ...unknownWall(context, ends)];
  if (hoops.length === 0) {
    notChecked.push({
      link: "end-wall",
      words: "the end hoops, bent by their end walls",
      why: "the standard gives no strength for this tube; see the hoops",
      demand: null,
    });
  }
  return {
    rows: [...hoops, ...studs.flatMap(({ rows }) => rows)],
    notChecked,
    findings: studs.flatMap(({ findings }) => findings),
  };
};
