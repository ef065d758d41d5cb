/** Curves of a job as pictures. */
package bayproof.report.plots;
