package org.leverbook.script;

import java.util.Optional;
import org.leverbook.notebook.Notebook;

/**
 * A notebook after its run.
 *
 * @param notebook its cells with what they gave
 * @param ran how many cells of code were run
 * @param trouble the mistake at which it ended; empty where it ended well
 */
record Finished(Notebook notebook, int ran, Optional<Trouble> trouble) {}
