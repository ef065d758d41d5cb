package bayproof.read;

import bayproof.units.Quantity;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a record stands in a file: its keys in order, those of inlined records among them, each with the form of its value. */
final class Layout {
    private Layout() {
    }

    /** What is written behind a key. */
    enum Form {
        /** Keys of a record of their own. */
        GROUP,
        /** Names, each with a value or a group. */
        NAMES,
        /** The same, or the word none. */
        NAMES_OR_NONE, LIST, QUANTITY, SIZE, COUNT, NUMBER, TRUTH, WORD
    }

    /** One key of a record. */
    record Slot(Field field, Type type) {
        Form form() {
            if (!(type instanceof ParameterizedType generic)) {
                return Form.GROUP;
            }
            if (generic.getRawType() == Map.class) {
                return Form.NAMES;
            }
            Type value = generic.getActualTypeArguments()[0];
            if (value instanceof ParameterizedType inner) {
                return inner.getRawType() == Map.class ? Form.NAMES_OR_NONE : Form.LIST;
            }
            if (value == Double.class || value == Quantity.class) {
                return Form.QUANTITY;
            }
            if (value == Integer.class) {
                return Form.COUNT;
            }
            if (value == BigDecimal.class) {
                return Form.NUMBER;
            }
            if (value == Boolean.class) {
                return Form.TRUTH;
            }
            return field.size() ? Form.SIZE : Form.WORD;
        }

        /** What stands behind each name of {@link Form#NAMES} or {@link Form#NAMES_OR_NONE}. */
        Slot named() {
            ParameterizedType names = (ParameterizedType) (form() == Form.NAMES ? type : ((ParameterizedType) type).getActualTypeArguments()[0]);
            return new Slot(field, names.getActualTypeArguments()[1]);
        }

        /** The record of {@link Form#GROUP}. */
        Class<?> group() {
            return (Class<?>) type;
        }

        /** Whether a quantity of any dimension may stand here. */
        boolean anyDimension() {
            return ((ParameterizedType) type).getActualTypeArguments()[0] == Quantity.class;
        }
    }

    /** The keys of a record. */
    static Map<String, Slot> of(Class<?> type) {
        Map<String, Slot> slots = new LinkedHashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Field field = component.getAnnotation(Field.class);
            if (field != null) {
                slots.put(field.key(), new Slot(field, component.getGenericType()));
            } else if (component.isAnnotationPresent(Inline.class)) {
                slots.putAll(of(component.getType()));
            }
        }
        return Collections.unmodifiableMap(slots);
    }

    /** The key that a path of keys leads to, or null when the record has none such. */
    static Slot find(Class<?> type, List<String> path) {
        Slot slot = of(type).get(path.get(0));
        for (String step : path.subList(1, path.size())) {
            if (slot == null) {
                return null;
            }
            slot = switch (slot.form()) {
                case GROUP -> of(slot.group()).get(step);
                case NAMES, NAMES_OR_NONE -> slot.named();
                default -> null;
            };
        }
        return slot;
    }
}
