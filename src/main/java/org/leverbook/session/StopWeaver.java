package org.leverbook.session;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Adds a stop check where a method begins and before every jump backwards, which is where code can
 * go on for ever. The check is one static call without operands: it leaves the stack and its map
 * frames as they are, so nothing has to be computed again.
 */
final class StopWeaver {

  static final String CHECK = "org/leverbook/session/StopCheck";

  private static final int API = Opcodes.ASM9;

  private StopWeaver() {}

  /**
   * Weaves the checks in.
   *
   * @param classFile a class file
   * @return the class file with checks; the same bytes where the class is of a Java newer than the
   *     weaver knows, whose loops then stop only by interrupt
   */
  static byte[] woven(byte[] classFile) {
    ClassReader reader;
    try {
      reader = new ClassReader(classFile);
    } catch (IllegalArgumentException e) {
      return classFile;
    }
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(new Classes(writer), 0);
    return writer.toByteArray();
  }

  private static final class Classes extends ClassVisitor {
    Classes(ClassVisitor next) {
      super(API, next);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] exceptions) {
      var next = super.visitMethod(access, name, descriptor, signature, exceptions);
      return next == null ? null : new Methods(next);
    }
  }

  private static final class Methods extends MethodVisitor {
    private final Set<Label> passed = new HashSet<>();

    Methods(MethodVisitor next) {
      super(API, next);
    }

    @Override
    public void visitCode() {
      super.visitCode();
      check();
    }

    @Override
    public void visitLabel(Label label) {
      passed.add(label);
      super.visitLabel(label);
    }

    @Override
    public void visitJumpInsn(int opcode, Label target) {
      checkIfBackwards(target);
      super.visitJumpInsn(opcode, target);
    }

    @Override
    public void visitTableSwitchInsn(int min, int max, Label otherwise, Label... targets) {
      checkIfBackwards(otherwise, targets);
      super.visitTableSwitchInsn(min, max, otherwise, targets);
    }

    @Override
    public void visitLookupSwitchInsn(Label otherwise, int[] keys, Label[] targets) {
      checkIfBackwards(otherwise, targets);
      super.visitLookupSwitchInsn(otherwise, keys, targets);
    }

    private void checkIfBackwards(Label first, Label... others) {
      boolean backwards = passed.contains(first);
      for (Label other : others) {
        backwards |= passed.contains(other);
      }
      if (backwards) {
        check();
      }
    }

    private void check() {
      super.visitMethodInsn(Opcodes.INVOKESTATIC, CHECK, "here", "()V", false);
    }
  }
}
