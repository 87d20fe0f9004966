package org.leverbook.statics;

/** From where a picture of a position is drawn. */
public enum View {
  /** From the lifter's right: the sagittal plane, where most lifts do their work. */
  SIDE,
  /** From before the lifter's pelvis: the frontal plane, for raises to the side and side bends. */
  FRONT
}
