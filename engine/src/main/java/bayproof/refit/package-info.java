/**
 * What carries over from a job in one vehicle into another vehicle, before either is taken apart: counterparts, a plan for the new
 * vehicle, and that plan judged by the same rules.
 */
package bayproof.refit;
