/**
 * A person of given proportions becomes a tree of segments and joints.
 *
 * <p>The tree's root is the pelvis. Each {@link org.leverbook.body.Segment} carries its own frame:
 * origin in the joint that holds it (for the pelvis: midway between the hip joint centres), axes
 * parallel to the world's in the anatomical position: X forward, Y up, Z to the person's right
 * (ISB; Wu et al. 2002, 2005). A {@link org.leverbook.body.Joint} turns by its {@link
 * org.leverbook.body.Freedom}s in order, each about an axis carried along by the ones before it (a
 * joint coordinate system), flexion, abduction and internal rotation positive on both sides of the
 * body.
 *
 * <p>Start at {@link org.leverbook.body.Person}; {@link org.leverbook.body.Body} is what the
 * physics reads.
 */
package org.leverbook.body;
