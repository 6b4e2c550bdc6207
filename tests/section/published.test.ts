import { testChapter } from "../published/test-chapter.ts";

testChapter("section");
