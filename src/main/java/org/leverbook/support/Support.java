package org.leverbook.support;

import java.util.List;
import org.leverbook.pose.Placement;

/** Something that holds the body up. */
public interface Support {

  /**
   * What a table calls it.
   *
   * @return as in "floor"
   */
  String source();

  /**
   * Where it can push.
   *
   * @param where where the body is
   * @return its contact points
   */
  List<Contact> contacts(Placement where);
}
