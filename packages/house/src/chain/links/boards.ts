import type { LinkNotChecked, Words } from "@hoopstay/core";
import { BoardOnHoops, boardStrength, type OneBoard } from "../component/board-on-hoops.ts";
import type { NetComponent } from "../component/component-groups.ts";
import { liftedFilms } from "../component/film-tension.ts";
import { leastPressureFinding } from "../component/least-pressure.ts";
import type { ChainContext } from "../context.ts";
import { designDemand } from "../demand.ts";
import { type HoopOutline, placeOnHoop } from "../hoop/hoop-outline.ts";
import type { LinkMaker, LinkRow, LinkRows } from "../link.ts";

function rowsOf(context: ChainContext, one: OneBoard, films: readonly NetComponent[]): LinkRows {
  const on = new BoardOnHoops(one, context, films);
  const { words, board } = one;
  const rows: LinkRow[] = [];
  const notChecked: LinkNotChecked[] = [];
  const missing = (what: string, why: string, demand: readonly LinkRow[]): void => {
    notChecked.push({ link: "boards", words: what, why, demand: designDemand(context, demand) });
  };
  const fixing = on.fixing(board.fixing);
  if (board.fixing !== null) rows.push(...fixing);
  else missing(`fixing of the ${words} to each hoop`, "its pull is not entered (fixing)", fixing);
  const [edge, face] = [boardStrength(board, "edge"), boardStrength(board, "face")];
  const findings: Words[] = [];
  if (edge.covered && face.covered) {
    rows.push(...on.bending(edge, face));
    findings.push(...edge.findings.map((finding): Words => [`The ${words}: ${finding}.`]));
    const method = context.evaluation.site.combination;
    findings.push(...leastPressureFinding(`The ${words}`, on.perPressure, face.moment, method));
  } else {
    const reason = [edge, face].find((strength) => !strength.covered);
    const why = reason && !reason.covered ? `${reason.reason}. ${reason.mend}` : "";
    missing(`bending of the ${words}`, why, on.onEdge());
  }
  return { rows, notChecked, findings };
}

function shareAtHeight(outline: HoopOutline, height: number): number {
  const { leg, arch } = outline;
  return Math.max(0, (placeOnHoop(outline, height, "left") - leg) / arch);
}

/** Base and hip boards: the film's edge pulls them along the cover, or wind presses on their face. */
export const boardsLink: LinkMaker = (context) => {
  const { baseBoards, hipBoards } = context.evaluation.house.links;
  const boards: OneBoard[] = [];
  if (baseBoards) boards.push({ words: "base boards", board: baseBoards, sides: 1, archShare: 0 });
  if (hipBoards) {
    const archShare = shareAtHeight(context.runs.outline, hipBoards.height);
    boards.push({ words: "hip boards", board: hipBoards, sides: 2, archShare });
  }
  if (boards.length === 0) {
    const words = "what the film's edges are made fast to";
    const why = "no boards are entered (base_boards, hip_boards)";
    return { rows: [], notChecked: [{ link: "boards", words, why, demand: null }], findings: [] };
  }
  const films = liftedFilms(context);
  const made = boards.map((one) => rowsOf(context, one, films));
  return {
    rows: made.flatMap(({ rows }) => rows),
    notChecked: made.flatMap(({ notChecked }) => notChecked),
    findings: made.flatMap(({ findings }) => findings),
  };
};
