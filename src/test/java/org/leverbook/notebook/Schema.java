package org.leverbook.notebook;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** The published schema of notebook files, format 4.5. */
public final class Schema {

  private static final com.networknt.schema.Schema PUBLISHED =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
          .getSchema(
              Schema.class.getResourceAsStream("/notebook/nbformat.v4.5.schema.json"),
              InputFormat.JSON);

  private Schema() {}

  /** What it says against a text; empty where the text is valid. */
  public static List<String> complaints(String text) {
    return PUBLISHED.validate(text, InputFormat.JSON).stream().map(Error::toString).toList();
  }
}
