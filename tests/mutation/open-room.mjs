import { fork } from "node:child_process";
import { join } from "node:path";

/** Opens a process for mutants. What does not answer in time is ended and comes back as late. */
export async function openRoom() {
  const child = fork(join(import.meta.dirname, "room.mjs"), { serialization: "advanced" });
  const answerWithin = (ms) =>
    new Promise((resolve, reject) => {
      const settle = (answer) => {
        clearTimeout(timer);
        child.removeAllListeners();
        resolve(answer);
      };
      const timer = setTimeout(() => {
        settle({ answer: { late: true } });
        child.kill("SIGKILL");
      }, ms);
      child.on("message", settle);
      child.on("exit", (code) => {
        clearTimeout(timer);
        reject(new Error(`a process for mutants ended by itself with ${code}`));
      });
    });
  await answerWithin(120_000);
  return {
    async ask(work, ms) {
      child.send(work);
      const { answer, failure } = await answerWithin(ms);
      if (failure) throw new Error(failure);
      return answer;
    },
    close: () => child.connected && child.disconnect(),
  };
}
