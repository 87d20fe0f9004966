package org.leverbook.load;

import java.util.List;
import org.leverbook.pose.Placement;

/** Something that pulls or presses on the body by a law that depends on where the body is. */
public interface Load {

  /**
   * What a table calls it.
   *
   * @return as in "bar"
   */
  String source();

  /**
   * What it is, for a caption.
   *
   * @return as in "barbell 140 kg"
   */
  String description();

  /**
   * Its mass as far as it rests on the body.
   *
   * @return kilograms
   */
  double mass();

  /**
   * The forces on the body.
   *
   * @param where where the body is
   * @return one force for each place it acts on
   */
  List<Force> forces(Placement where);
}
