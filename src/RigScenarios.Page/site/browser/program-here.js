// A page's first script where there is no server: from now on the library in this browser answers it. The page's own script
// comes after it.
import { useProgram } from "../shared/program.js";
import { tellLoading } from "./loading.js";
import { browserProgram } from "./program.js";

// The folder has the scripts in assets/, and beside it the library in library/. Notebooks call more of it than the form does: on
// their page it is the one in notebook-library/, which holds their cells too.
const library = /\/notebook(\.html)?$/.test(location.pathname) ? "notebook-library" : "library";
useProgram(browserProgram({ library: new URL(`../../${library}/boot.js`, import.meta.url).href, loading: tellLoading }));
