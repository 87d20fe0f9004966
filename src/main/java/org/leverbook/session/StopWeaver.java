package org.leverbook.session;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Adds a stop check where a method begins and before every jump backwards, which is where code can
 * go on for ever. The check is one static call without operands: it leaves the stack and its map
 * frames as they are, so nothing has to be computed again.
 *
 * <p>Calls that would end the whole process are turned into a refusal, which takes the same
 * operands off the stack. Whoever reaches them by reflection still gets through.
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

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean ofInterface) {
      if (!Ending.isMeant(owner, name)) {
        super.visitMethodInsn(opcode, owner, name, descriptor, ofInterface);
        return;
      }
      String asStatic = Ending.descriptor(opcode == Opcodes.INVOKESTATIC, owner, descriptor);
      super.visitMethodInsn(Opcodes.INVOKESTATIC, CHECK, "refuseToEnd", asStatic, false);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      Object[] kept = arguments.clone();
      for (int i = 0; i < kept.length; i++) {
        if (kept[i] instanceof Handle handle
            && Ending.isMeant(handle.getOwner(), handle.getName())) {
          kept[i] = Ending.refusal(handle);
        }
      }
      super.visitInvokeDynamicInsn(name, descriptor, bootstrap, kept);
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

  /** The calls that end the process: {@code System.exit}, {@code Runtime.exit} and its halt. */
  private static final class Ending {
    private static final Set<String> OWNERS = Set.of("java/lang/System", "java/lang/Runtime");
    private static final Set<String> NAMES = Set.of("exit", "halt");

    private Ending() {}

    static boolean isMeant(String owner, String name) {
      return OWNERS.contains(owner) && NAMES.contains(name);
    }

    /** A static method takes as its first argument what another is called on. */
    static String descriptor(boolean isStatic, String owner, String descriptor) {
      return isStatic ? descriptor : "(L" + owner + ";" + descriptor.substring(1);
    }

    static Handle refusal(Handle call) {
      boolean isStatic = call.getTag() == Opcodes.H_INVOKESTATIC;
      String asStatic = descriptor(isStatic, call.getOwner(), call.getDesc());
      return new Handle(Opcodes.H_INVOKESTATIC, CHECK, "refuseToEnd", asStatic, false);
    }
  }
}
