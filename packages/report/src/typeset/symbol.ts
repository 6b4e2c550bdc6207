import { figures, joined, name, type Row, sign, subscript, uprightLetter } from "./element.ts";

const greek = new Map(
  (
    "alpha α,beta β,gamma γ,delta δ,epsilon ϵ,zeta ζ,eta η,theta θ,iota ι,kappa κ,lambda λ,mu μ," +
    "nu ν,xi ξ,pi π,rho ρ,sigma σ,tau τ,upsilon υ,phi ϕ,chi χ,psi ψ,omega ω," +
    "Gamma Γ,Delta Δ,Theta Θ,Lambda Λ,Xi Ξ,Pi Π,Sigma Σ,Phi Φ,Psi Ψ,Omega Ω"
  )
    .split(",")
    .map((pair) => pair.split(" ") as [word: string, letter: string]),
);

const nameShape = /^[A-Za-z]+\d*(_[A-Za-z0-9]+)*(,[A-Za-z0-9]+)*$/;

/** Whether a symbol is a name with subscripts, as the formulas write them: K_zt, p_min,r. */
export const isName = (symbol: string): boolean => nameShape.test(symbol);

/** Greek letters by name; their capitals stand upright. */
function letter(word: string): Row {
  const found = greek.get(word);
  if (!found) return name(word);
  return /^[A-Z]/.test(word) ? uprightLetter(found) : name(found);
}

/** Below the line `pi` is "internal pressure". */
function part(word: string): Row {
  if (/^\d+$/.test(word)) return figures(word);
  return word === "pi" ? name(word) : letter(word);
}

/** A symbol in MathML: figures after its letters, and all after a `_` or a comma, below the line. */
export function symbolRow(symbol: string): Row {
  const [base = "", ...others] = symbol.split(/[_,]/);
  const head = base.replace(/\d+$/, "");
  const below = [base.slice(head.length), ...others].filter(Boolean);
  return below.length === 0
    ? letter(head)
    : subscript(letter(head), joined(below.map(part), sign(",")));
}
