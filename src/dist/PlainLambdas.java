import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Makes a plain class of each lambda and method reference, for the package: a plain class comes out
 * of the archive as it is, where a lambda is linked anew by interpreted code at each start. What a
 * plain class cannot say alike (a serializable lambda, an odd conversion) stays as it was.
 */
final class PlainLambdas {
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String ONLY = "it";
  private static final String MAKE = "of";
  private static final Map<Integer, String> BOXES =
      Map.of(
          Type.BOOLEAN, "Boolean",
          Type.CHAR, "Character",
          Type.BYTE, "Byte",
          Type.SHORT, "Short",
          Type.INT, "Integer",
          Type.FLOAT, "Float",
          Type.LONG, "Long",
          Type.DOUBLE, "Double");

  private final Map<String, byte[]> made = new TreeMap<>();
  private final Map<String, List<String>> newMembers = new TreeMap<>();

  /**
   * Converts the classes of one folder.
   *
   * @param arguments the folder with the classes; the folder where all of it goes, converted
   */
  public static void main(String[] arguments) throws IOException {
    Path from = Path.of(arguments[0]);
    Path to = Path.of(arguments[1]);
    PlainLambdas plain = new PlainLambdas();
    Map<String, byte[]> classes = new TreeMap<>();
    for (Path file : files(from)) {
      String name = from.relativize(file).toString();
      if (name.endsWith(".class")) {
        classes.put(name.substring(0, name.length() - 6), Files.readAllBytes(file));
      } else {
        write(to.resolve(name), Files.readAllBytes(file));
      }
    }
    classes.replaceAll((name, bytes) -> plain.convert(bytes));
    plain.newMembers.forEach((top, added) -> classes.computeIfPresent(top, (t, b) -> nest(b, added)));
    classes.putAll(plain.made);
    for (Map.Entry<String, byte[]> each : classes.entrySet()) {
      write(to.resolve(each.getKey() + ".class"), each.getValue());
    }
    System.out.println(plain.made.size() + " plain classes made of lambdas");
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  /** The class with each lambda made by a class of its own. */
  private byte[] convert(byte[] bytes) {
    ClassReader reader = new ClassReader(bytes);
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(new Host(writer), 0);
    return writer.toByteArray();
  }

  /** The top of a nest with further members, which may then call what is private in it. */
  private static byte[] nest(byte[] bytes, List<String> members) {
    ClassReader reader = new ClassReader(bytes);
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(writer, 0);
    members.forEach(writer::visitNestMember);
    return writer.toByteArray();
  }

  /** A class whose lambdas are converted. */
  private final class Host extends ClassVisitor {
    private String name = "";
    private String top = "";
    private int lambdas;

    Host(ClassVisitor next) {
      super(Opcodes.ASM9, next);
    }

    @Override
    public void visit(int version, int access, String self, String sign, String up, String[] like) {
      name = self;
      top = self;
      super.visit(version, access, self, sign, up, like);
    }

    @Override
    public void visitNestHost(String host) {
      top = host;
      super.visitNestHost(host);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String method, String descriptor, String sign, String[] thrown) {
      MethodVisitor next = super.visitMethod(access, method, descriptor, sign, thrown);
      return new MethodVisitor(Opcodes.ASM9, next) {
        @Override
        public void visitInvokeDynamicInsn(String sam, String site, Handle by, Object... with) {
          Lambda lambda = new Lambda(name + "$$Plain" + lambdas, top, sam, site, by, with);
          if (!lambda.isPlain()) {
            super.visitInvokeDynamicInsn(sam, site, by, with);
            return;
          }
          lambdas++;
          made.put(lambda.self(), lambda.bytes());
          newMembers.computeIfAbsent(top, t -> new ArrayList<>()).add(lambda.self());
          if (lambda.isOnly()) {
            super.visitFieldInsn(Opcodes.GETSTATIC, lambda.self(), ONLY, lambda.type());
          } else {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, lambda.self(), MAKE, site, false);
          }
        }
      };
    }
  }

  /** One lambda or method reference: what it is called by, and what it calls. */
  private record Lambda(
      String self, String top, String sam, String site, Handle factory, Object[] with) {

    /** Of the plain kind, and every value goes over as it is, boxed or unboxed. */
    boolean isPlain() {
      return factory.getOwner().equals(FACTORY)
          && factory.getName().equals("metafactory")
          && passes()
          && returns();
    }

    boolean isOnly() {
      return captured().length == 0;
    }

    String type() {
      return Type.getReturnType(site).getDescriptor();
    }

    private Type[] captured() {
      return Type.getArgumentTypes(site);
    }

    private Type erased() {
      return (Type) with[0];
    }

    private Handle calls() {
      return (Handle) with[1];
    }

    private Type exact() {
      return (Type) with[2];
    }

    /** What the call takes, in its order: the object that it is called on, then its parameters. */
    private List<Type> taken() {
      List<Type> taken = new ArrayList<>();
      boolean on = calls().getTag() != Opcodes.H_INVOKESTATIC && !isNew();
      if (on) {
        taken.add(Type.getObjectType(calls().getOwner()));
      }
      taken.addAll(List.of(Type.getArgumentTypes(calls().getDesc())));
      return taken;
    }

    private boolean isNew() {
      return calls().getTag() == Opcodes.H_NEWINVOKESPECIAL;
    }

    private Type given() {
      return isNew()
          ? Type.getObjectType(calls().getOwner())
          : Type.getReturnType(calls().getDesc());
    }

    private boolean passes() {
      List<Type> taken = taken();
      Type[] exact = exact().getArgumentTypes();
      int before = captured().length;
      for (int i = 0; i < exact.length; i++) {
        if (!goes(exact[i], taken.get(before + i))) {
          return false;
        }
      }
      return taken.size() == before + exact.length;
    }

    private boolean returns() {
      Type wanted = erased().getReturnType();
      return wanted.getSort() == Type.VOID || goes(given(), wanted);
    }

    private static boolean goes(Type from, Type to) {
      return isReference(from) == isReference(to)
          ? isReference(from) || from.equals(to)
          : isReference(from) ? from.equals(box(to)) : isReference(to) && takes(to, from);
    }

    private static boolean takes(Type reference, Type primitive) {
      return box(primitive).equals(reference) || reference.getClassName().equals("java.lang.Object");
    }

    private static boolean isReference(Type type) {
      return type.getSort() >= Type.ARRAY;
    }

    private static Type box(Type primitive) {
      return Type.getObjectType("java/lang/" + BOXES.getOrDefault(primitive.getSort(), "Void"));
    }

    byte[] bytes() {
      ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
      String[] like = {Type.getReturnType(site).getInternalName()};
      writer.visit(Opcodes.V17, access, self, null, "java/lang/Object", like);
      writer.visitNestHost(top);
      make(writer);
      if (isOnly()) {
        only(writer);
      } else {
        factory(writer);
      }
      call(writer);
      writer.visitEnd();
      return writer.toByteArray();
    }

    /** The constructor, which keeps what was captured. */
    private void make(ClassWriter writer) {
      MethodVisitor code = writer.visitMethod(0, "<init>", constructor(), null, null);
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
      int at = 1;
      for (int i = 0; i < captured().length; i++) {
        Type type = captured()[i];
        writer.visitField(Opcodes.ACC_FINAL, "c" + i, type.getDescriptor(), null, null);
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), at);
        code.visitFieldInsn(Opcodes.PUTFIELD, self, "c" + i, type.getDescriptor());
        at += type.getSize();
      }
      end(code, Opcodes.RETURN);
    }

    private String constructor() {
      return Type.getMethodDescriptor(Type.VOID_TYPE, captured());
    }

    /** Nothing is captured: one for all. */
    private void only(ClassWriter writer) {
      int access = Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
      writer.visitField(access, ONLY, type(), null, null);
      MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
      code.visitTypeInsn(Opcodes.NEW, self);
      code.visitInsn(Opcodes.DUP);
      code.visitMethodInsn(Opcodes.INVOKESPECIAL, self, "<init>", "()V", false);
      code.visitFieldInsn(Opcodes.PUTSTATIC, self, ONLY, type());
      end(code, Opcodes.RETURN);
    }

    private void factory(ClassWriter writer) {
      MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, MAKE, site, null, null);
      code.visitTypeInsn(Opcodes.NEW, self);
      code.visitInsn(Opcodes.DUP);
      int at = 0;
      for (Type type : captured()) {
        code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), at);
        at += type.getSize();
      }
      code.visitMethodInsn(Opcodes.INVOKESPECIAL, self, "<init>", constructor(), false);
      end(code, Opcodes.ARETURN);
    }

    /** The method of the interface: it hands over what was captured and what comes. */
    private void call(ClassWriter writer) {
      String descriptor = erased().getDescriptor();
      MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC, sam, descriptor, null, null);
      if (isNew()) {
        code.visitTypeInsn(Opcodes.NEW, calls().getOwner());
        code.visitInsn(Opcodes.DUP);
      }
      for (int i = 0; i < captured().length; i++) {
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitFieldInsn(Opcodes.GETFIELD, self, "c" + i, captured()[i].getDescriptor());
      }
      handOver(code);
      code.visitMethodInsn(
          opcode(),
          calls().getOwner(),
          calls().getName(),
          calls().getDesc(),
          calls().isInterface());
      giveBack(code);
    }

    private void handOver(MethodVisitor code) {
      List<Type> taken = taken();
      Type[] comes = erased().getArgumentTypes();
      Type[] exact = exact().getArgumentTypes();
      int at = 1;
      for (int i = 0; i < comes.length; i++) {
        code.visitVarInsn(comes[i].getOpcode(Opcodes.ILOAD), at);
        at += comes[i].getSize();
        cast(code, comes[i], exact[i]);
        turn(code, exact[i], taken.get(captured().length + i));
      }
    }

    private int opcode() {
      return switch (calls().getTag()) {
        case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
        case Opcodes.H_INVOKEINTERFACE -> Opcodes.INVOKEINTERFACE;
        case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
        // What is private is called like any other by a member of its nest.
        default -> calls().isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
      };
    }

    private void giveBack(MethodVisitor code) {
      Type wanted = erased().getReturnType();
      if (wanted.getSort() != Type.VOID) {
        turn(code, given(), wanted);
        cast(code, given(), wanted);
      } else if (given().getSort() != Type.VOID) {
        code.visitInsn(given().getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
      }
      end(code, wanted.getOpcode(Opcodes.IRETURN));
    }

    private static void cast(MethodVisitor code, Type from, Type to) {
      boolean references = isReference(from) && isReference(to);
      if (references && !from.equals(to) && !to.getClassName().equals("java.lang.Object")) {
        code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
      }
    }

    /** Boxes or unboxes. */
    private static void turn(MethodVisitor code, Type from, Type to) {
      if (isReference(from) && !isReference(to)) {
        String by = to.getClassName() + "Value";
        String descriptor = Type.getMethodDescriptor(to);
        code.visitMethodInsn(
            Opcodes.INVOKEVIRTUAL, from.getInternalName(), by, descriptor, false);
      } else if (!isReference(from) && isReference(to)) {
        String descriptor = Type.getMethodDescriptor(box(from), from);
        code.visitMethodInsn(
            Opcodes.INVOKESTATIC, box(from).getInternalName(), "valueOf", descriptor, false);
      }
    }

    private static void end(MethodVisitor code, int by) {
      code.visitInsn(by);
      code.visitMaxs(0, 0);
      code.visitEnd();
    }
  }
}
