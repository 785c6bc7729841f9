/** The charts of a record's sheet: what was traced where, tracing anew, and what persons mend. */
package commonsheet.workbench.figure;
