import type { LinkNotChecked } from "@hoopstay/core";
import type { Worksheet } from "@hoopstay/strength";
import { componentCases, type NetComponent } from "../component/component-groups.ts";
import { pullOnLength } from "../component/component-loads.ts";
import { liftedFilms, workTension } from "../component/film-tension.ts";
import { designDemand, ratedResistance, unrated } from "../demand.ts";
import type { LinkMaker, LinkRow } from "../link.ts";
import { windRow } from "../worked-row.ts";

/** The edge of the cover: film lifted off its hoops hangs from lock channels and their screws. */
export const coverLink: LinkMaker = (context) => {
  const { house, shell } = context.evaluation;
  const { channel } = house.links;
  const films = liftedFilms(context);
  const rowsOf = (
    part: string,
    measure: "force" | "force-per-length",
    demand: (sheet: Worksheet, q: number, film: NetComponent) => number,
    allowable: number | null,
  ): LinkRow[] =>
    films.flatMap((film) =>
      componentCases(film).map((windCase) =>
        windRow(
          {
            link: "cover",
            part,
            place: "edges near the ends of the house",
            run: "film lifted off its hoops",
            windCase,
            measure,
          },
          (sheet, q) => demand(sheet, q, film),
          allowable === null ? unrated : ratedResistance(allowable),
        ),
      ),
    );
  const pull = (sheet: Worksheet, q: number, film: NetComponent): number =>
    workTension(sheet, q, film, shell.arc.radius);
  const rows: LinkRow[] = [];
  const notChecked: LinkNotChecked[] = [];
  const missing = (words: string, why: string, demand: readonly LinkRow[]): void => {
    notChecked.push({ link: "cover", words, why, demand: designDemand(context, demand) });
  };
  const film = "film pulled out of the lock channel";
  const allowable = channel?.allowable ?? null;
  const inChannel = rowsOf(film, "force-per-length", pull, allowable);
  if (allowable !== null) rows.push(...inChannel);
  else missing(film, "its rating is not entered (film.channel.allowable)", inChannel);
  const screw = "screws of the lock channel";
  const spacing = channel?.screwSpacing ?? null;
  const each = channel?.screwAllowable ?? null;
  if (spacing === null) {
    missing(screw, "their spacing is not entered (film.channel.screw_spacing)", inChannel);
  } else {
    const onScrew = (sheet: Worksheet, q: number, one: NetComponent): number =>
      sheet.work(pullOnLength, [pull(sheet, q, one), spacing]);
    const screws = rowsOf(screw, "force", onScrew, each);
    if (each !== null) rows.push(...screws);
    else missing(screw, "their rating is not entered (film.channel.screw_allowable)", screws);
  }
  return { rows, notChecked, findings: [] };
};
