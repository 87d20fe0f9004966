/**
 * Typed readers of the published tables under {@code datasets/}.
 *
 * <p>A table is a CSV file whose first lines, marked {@code #}, name its sources; then comes one
 * header line. {@link org.leverbook.data.DataTable} keeps the sources beside the rows, so that a
 * result can say where its numbers come from, and a bad cell is reported with file, line and
 * column.
 */
package org.leverbook.data;
