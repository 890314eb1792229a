/** The two functions that natural's edit distance takes from underscore; the package's root would bring all of it. */
import extend from "underscore/modules/extend.js";
import min from "underscore/modules/min.js";

export default { extend, min };
