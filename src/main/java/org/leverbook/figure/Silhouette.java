package org.leverbook.figure;

import java.awt.geom.Area;

/**
 * One piece of the drawn body.
 *
 * @param name as in "near leg"
 * @param far whether it lies behind the trunk, seen from the right
 * @param area its outline in the world's sagittal plane, metres, x forward, y up
 */
record Silhouette(String name, boolean far, Area area) {}
