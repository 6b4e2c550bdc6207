const roles = ["Originator", "Checker", "Engineer"];

/** Blank lines to be filled by hand; nothing in them comes from the program. */
export const signatures = `<h3>To be filled in by hand</h3>
<div class="sign">${roles
  .map(
    (role) =>
      `<div><b>${role}</b><span>Name</span><span>Date</span><span>Signature</span>${
        role === "Engineer" ? '<span class="seal">Seal</span>' : ""
      }</div>`,
  )
  .join("")}</div>`;
