/** The two functions that natural's edit distance takes from underscore; the package's root would bring all of it. */
// named, not a default: the distance asks for them by `require`, which gives the module and not its default
export { default as extend } from "underscore/modules/extend.js";
export { default as min } from "underscore/modules/min.js";
