// A notebook that listens: every change of a control goes to the program, and what comes back goes into the article.
import { notebookHere } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import "../shared/inner-links.js";
import { LivePage } from "./live-page.js";

new LivePage(notebookHere(), { article: byId("article"), message: byId("message"), told: byId("told") });
