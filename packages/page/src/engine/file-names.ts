/** What complaints call the files of the page. */
export const fileNames = { house: "house file", site: "site file" } as const;
