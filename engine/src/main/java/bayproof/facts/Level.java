package bayproof.facts;

/** How hard the amplifiers work. */
enum Level {
    FULL_SINE("full sine"), LOUD_PROGRAMME("loud programme"), NORMAL_PROGRAMME("normal programme"), IDLE("idle");

    private final String words;

    Level(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Share of full-sine output. */
    double share(Model model) {
        return switch (this) {
            case FULL_SINE -> 1;
            case LOUD_PROGRAMME -> model.value("level-loud-programme");
            case IDLE -> 0;
            case NORMAL_PROGRAMME -> model.value("level-normal-programme");
        };
    }
}
