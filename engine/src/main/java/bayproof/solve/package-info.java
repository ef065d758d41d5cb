/**
 * The DC operating point of a wiring network: a description of the network ({@link bayproof.solve.Network}), the
 * solver ({@link bayproof.solve.Solver}) and its answer ({@link bayproof.solve.Solution}). It knows nothing of plans,
 * parts or rules.
 */
package bayproof.solve;
