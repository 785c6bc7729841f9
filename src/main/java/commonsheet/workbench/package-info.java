/**
 * The workbench: local pages in a browser, on which records are checked against their sheets. This
 * package starts and stops it; {@code http} guards the door, {@code folder} knows the files, {@code
 * desk} changes records, {@code place} shows what stands where on a sheet, {@code figure} its
 * charts.
 */
package commonsheet.workbench;
