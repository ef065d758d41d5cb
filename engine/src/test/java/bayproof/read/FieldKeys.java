package bayproof.read;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.RecordComponent;
import java.util.Locale;
import java.util.TreeSet;

/** What the input files may hold, as {@code <record>.<key>}; a key of every item stands under {@code item} as well. */
public final class FieldKeys {
    private FieldKeys() {
    }

    /** All of them, from the records that read the files. */
    public static TreeSet<String> all() {
        TreeSet<String> keys = new TreeSet<>();
        JavaClasses read = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("bayproof.read");
        for (JavaClass type : read) {
            if (type.isRecord()) {
                for (RecordComponent component : type.reflect().getRecordComponents()) {
                    if (component.isAnnotationPresent(Field.class)) {
                        String key = component.getAnnotation(Field.class).key();
                        keys.add(type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT) + "." + key);
                        if (type.isAssignableTo(Item.class)) {
                            keys.add("item." + key);
                        }
                    }
                }
            }
        }
        return keys;
    }
}
