package commonsheet.workbench.desk;

/**
 * Which record a person wants to change.
 *
 * @param file its name in the folder
 * @param version of the file as the person saw it; where the file has another by now, nothing is
 *     changed
 * @param by who the person is
 */
public record Edit(String file, String version, String by) {}
