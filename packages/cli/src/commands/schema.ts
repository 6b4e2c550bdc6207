export { jsonSchema } from "@hoopstay/house";
