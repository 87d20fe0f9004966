package org.leverbook.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.body.Body;
import org.leverbook.load.Load;
import org.leverbook.load.NoLoad;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Support;

/**
 * Who is where, with what loads, on what supports: all that a position is computed from.
 *
 * @param body whose
 * @param pose joint angles and place
 * @param loads what is held or pulls
 * @param supports what holds the person up or is leaned on
 * @param leaning how far the person relaxes onto the pads: 0 leaves them untouched as far as that
 *     can be, 1 relaxes
 * @param sides edges of each contact's cone of friction
 * @param view from where it is drawn; changes no number
 */
record Setting(
    Body body,
    Pose pose,
    List<Load> loads,
    List<Support> supports,
    double leaning,
    int sides,
    View view) {

  Setting {
    loads = loads.stream().filter(load -> !(load instanceof NoLoad)).toList();
    supports = List.copyOf(supports);
  }

  Setting with(Load... more) {
    List<Load> all = new ArrayList<>(loads);
    all.addAll(Arrays.asList(more));
    return new Setting(body, pose, all, supports, leaning, sides, view);
  }

  Setting changing(UnaryOperator<Load> change) {
    return new Setting(
        body, pose, loads.stream().map(change).toList(), supports, leaning, sides, view);
  }

  Setting on(Support... more) {
    List<Support> all = new ArrayList<>(supports);
    all.addAll(Arrays.asList(more));
    return new Setting(body, pose, loads, all, leaning, sides, view);
  }

  Setting leaning(double share) {
    return new Setting(body, pose, loads, supports, share, sides, view);
  }

  Setting seenFrom(View from) {
    return new Setting(body, pose, loads, supports, leaning, sides, from);
  }

  Setting finer() {
    return new Setting(body, pose, loads, supports, leaning, 8, view);
  }

  Setting without(String source) {
    List<Load> loadsLeft = loads.stream().filter(l -> !l.source().equals(source)).toList();
    List<Support> supportsLeft = supports.stream().filter(s -> !s.source().equals(source)).toList();
    if (loadsLeft.size() == loads.size() && supportsLeft.size() == supports.size()) {
      throw new Refused(
          "There is no \""
              + source
              + "\" here to take away; there is "
              + Stream.concat(
                      loads.stream().map(Load::source), supports.stream().map(Support::source))
                  .distinct()
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return new Setting(body, pose, loadsLeft, supportsLeft, leaning, sides, view);
  }
}
