/** What every request of the workbench passes through, and what every answer looks like. */
package commonsheet.workbench.http;
