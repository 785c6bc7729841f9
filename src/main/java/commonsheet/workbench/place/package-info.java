/** What stands where on a sheet: pictures of its pages, its words, and what a drawn box says. */
package commonsheet.workbench.place;
