/** The files that a workbench works on: records, and the sheets they were read from. */
package commonsheet.workbench.folder;
