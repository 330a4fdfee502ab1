// biome-ignore-all lint: written by generate.ts
// biome-ignore-all format: written by generate.ts
export interface paths {
    "/v1/families": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All 66 families with their modes */
        get: operations["families"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/families/{family}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One family */
        get: operations["family"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Modes by name, alias or degrees */
        get: operations["modes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One mode */
        get: operations["mode"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A mode on a root */
        get: operations["scale"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/related": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Scales that belong with a scale */
        get: operations["related"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fretboard": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every place of every note on a neck */
        get: operations["fretboard"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fretboard.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every place of every note on a neck, as .svg */
        get: operations["fretboard-svg"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fretboard.txt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every place of every note on a neck, as .txt */
        get: operations["fretboard-txt"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fingerings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ways to play a scale, best first */
        get: operations["fingerings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fingerings.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ways to play a scale, best first, as .svg */
        get: operations["fingerings-svg"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fingerings.txt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ways to play a scale, best first, as .txt */
        get: operations["fingerings-txt"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fingerings.mid": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ways to play a scale, best first, as .mid */
        get: operations["fingerings-mid"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/modes/{mode}/{root}/fingerings.musicxml": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ways to play a scale, best first, as .musicxml */
        get: operations["fingerings-musicxml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rounds/{family}/{root}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The seven modes of a family from one root in one area of the neck */
        get: operations["round"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rounds/{family}/{root}.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The seven modes of a family from one root in one area of the neck, as .svg */
        get: operations["round-svg"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rounds/{family}/{root}.txt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The seven modes of a family from one root in one area of the neck, as .txt */
        get: operations["round-txt"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rounds/{family}/{root}.mid": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The seven modes of a family from one root in one area of the neck, as .mid */
        get: operations["round-mid"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rounds/{family}/{root}.musicxml": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The seven modes of a family from one root in one area of the neck, as .musicxml */
        get: operations["round-musicxml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/compare": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Two modes on one root, degree by degree */
        get: operations["compare"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/routes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A shortest chain of neighbours between two modes */
        get: operations["route"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Scales that hold the given notes, or the notes of the given chords */
        get: operations["search"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/instruments": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The instruments and their tunings, all or those that words are found in */
        get: operations["instruments"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/instruments/{instrument}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One instrument */
        get: operations["instrument"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the server answers */
        get: operations["health"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/ready": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the server takes requests; 503 while it stops */
        get: operations["ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Up to 50 answers at once */
        post: operations["batch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/docs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The reference, for people */
        get: operations["reference"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** This document */
        get: operations["openapi"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/metrics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Figures of the server, as Prometheus reads them */
        get: operations["metrics"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description Seven modes that are rotations of one another. */
        Family: {
            /** @description the steps of its brightest mode, written together */
            id: string;
            /** @description what addresses call the family */
            slug: string;
            /** @description its name, with ASCII accidentals */
            name: string;
            /** @description what else it is called */
            aliases: string[];
            /** @description of its brightest mode: semitones from each degree to the next */
            steps: number[];
            /** @description by degree, from the mode the family is named after */
            modes: components["schemas"]["ModeSummary"][];
        };
        /** @description A mode, as lists have it. */
        ModeSummary: {
            /** @description the seven steps written together */
            id: string;
            /** @description what addresses call the mode */
            slug: string;
            /** @description its name, with ASCII accidentals */
            name: string;
            /** @description the degree of its family's first mode on which it stands */
            degree: number;
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            /** @description what else it is called */
            aliases: string[];
        };
        /** @description A mode, without a root. */
        Mode: {
            /** @description the seven steps written together */
            id: string;
            /** @description what addresses call the mode */
            slug: string;
            /** @description its name, with ASCII accidentals */
            name: string;
            /** @description the one name that follows from its notes: the nearest church mode, then what differs */
            systematicName: string;
            /** @description what else it is called */
            aliases: string[];
            /** @description the names that are published, and where */
            names: {
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description where that is published: author, title, year */
                sources: string[];
                /** @description the tradition that says so, where it is not the European trade: Carnatic mela 14 */
                tradition?: string;
                /** @description whether it is from memory */
                recalled: boolean;
            }[];
            /** @description semitones from each degree to the next */
            steps: number[];
            /** @description semitones of each degree above the root */
            semitones: number[];
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            /** @description the sum of all alterations against the major scale: 1 for Lydian, -5 for Locrian */
            brightness: number;
            /** @description the family, and where in it the mode stands */
            family: {
                /** @description the steps of its brightest mode, written together */
                id: string;
                /** @description what addresses call the family */
                slug: string;
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description the degree of its family's first mode on which it stands */
                degree: number;
            };
            /** @description the nearest church mode */
            base: {
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description the degrees that lie elsewhere in this mode */
                moved: components["schemas"]["Moved"][];
            };
        };
        /** @description A degree that lies elsewhere in another mode on the same root. */
        Moved: {
            /** @description 1 to 7, counted from the root */
            degree: number;
            /** @description semitones, down below zero */
            by: number;
        };
        /** @description A mode on a root. */
        Scale: {
            /** @description the seven steps written together */
            id: string;
            /** @description what addresses call the mode */
            slug: string;
            /** @description root and mode */
            name: string;
            /** @description the one name that follows from its notes: the nearest church mode, then what differs */
            systematicName: string;
            /** @description what else it is called */
            aliases: string[];
            /** @description the names that are published, and where */
            names: {
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description where that is published: author, title, year */
                sources: string[];
                /** @description the tradition that says so, where it is not the European trade: Carnatic mela 14 */
                tradition?: string;
                /** @description whether it is from memory */
                recalled: boolean;
            }[];
            /** @description semitones from each degree to the next */
            steps: number[];
            /** @description semitones of each degree above the root */
            semitones: number[];
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            /** @description the sum of all alterations against the major scale: 1 for Lydian, -5 for Locrian */
            brightness: number;
            /** @description the family, and where in it the mode stands */
            family: {
                /** @description the steps of its brightest mode, written together */
                id: string;
                /** @description what addresses call the family */
                slug: string;
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description the degree of its family's first mode on which it stands */
                degree: number;
            };
            /** @description the nearest church mode */
            base: {
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description the degrees that lie elsewhere in this mode */
                moved: components["schemas"]["Moved"][];
            };
            /** @description the root, as it was asked for or as it is spelled */
            root: string;
            /** @description the mode alone */
            modeName: string;
            /** @description strict: each of the seven letters once */
            notes: string[];
            /** @description for the eye: at most one accidental each where strict needs more than a double one */
            readable: string[];
            /** @description the first mode of the family on these notes */
            parent: {
                /** @description root and mode */
                name: string;
                /** @description what addresses call the mode */
                mode: string;
                /** @description the root, as it was asked for or as it is spelled */
                root: string;
            };
            /** @description the enharmonic root with the kindest spelling */
            kindest: string;
            /** @description thirds stacked on each degree */
            chords: {
                /** @description of three notes, one a degree */
                triads: {
                    /** @description the degree it stands on */
                    degree: number;
                    /** @description root and kind: Amin, Bbmaj7 */
                    name: string;
                    /** @description maj, min, dim, maj7#5 and so on; degrees (1 b3 bb5) where there is no usual name */
                    kind: string;
                    /** @description from its root upwards */
                    notes: string[];
                }[];
                /** @description of four notes, one a degree */
                sevenths: {
                    /** @description the degree it stands on */
                    degree: number;
                    /** @description root and kind: Amin, Bbmaj7 */
                    name: string;
                    /** @description maj, min, dim, maj7#5 and so on; degrees (1 b3 bb5) where there is no usual name */
                    kind: string;
                    /** @description from its root upwards */
                    notes: string[];
                }[];
            };
        };
        /** @description A way to play a scale: strings, frets and fingers. */
        Fingering: {
            /** @description the frets that are played between */
            area: {
                /** @description 0 for the open string, else the fret as the inlays count it */
                from: number;
                /** @description 0 for the open string, else the fret as the inlays count it */
                to: number;
            };
            /** @description the frets at which finger 1 is at home, one after the other */
            positions: number[];
            /** @description the widest span the hand covers without moving */
            reachMm: number;
            /** @description why it stands where it does among others: the lower, the better, from the first on */
            cost: {
                /**
                 * @description notes that no finger reaches: never any
                 * @constant
                 */
                outOfReach: 0;
                /** @description how far finger 1 moves along the neck */
                travelMm: number;
                /** @description how often it moves */
                shifts: number;
                /** @description how far fingers reach beyond their own frets */
                stretchMm: number;
                /** @description awkward ones: a string skipped, a step back, a finger that rolls */
                stringChanges: number;
            };
            /** @description from the lowest to the highest */
            notes: {
                /** @description 1 at the highest-sounding side */
                string: number;
                /** @description 0 for the open string, else the fret as the inlays count it */
                fret: number;
                /** @description a note, or a note with its octave, in ASCII */
                note: string;
                /** @description 1 to 7, counted from the root */
                degree: number;
                /** @description the MIDI note number as it sounds, 60 for middle C */
                midi: number;
                /** @description 1 to 4, the index first; 0 an open string */
                finger: number;
            }[];
        };
        /** @description A fretted instrument and its tunings. */
        Instrument: {
            /** @description what addresses call it */
            id: string;
            /** @description its name, with ASCII accidentals */
            name: string;
            /** @description what else it is called */
            aliases: string[];
            /** @description the group of instruments it belongs to */
            kind: string;
            /** @description how many strings or courses */
            strings: number;
            /** @description that of fingerings, where no other is asked for */
            scaleLengthMm: number;
            /** @description what is built; not a limit */
            scaleLengthRangeMm: {
                /** @description the least */
                from: number;
                /** @description the most */
                to: number;
            };
            /** @description the last fret, where no other is asked for */
            frets: number;
            /** @description the fewest and the most frets that are built */
            fretsRange: {
                /** @description the least */
                from: number;
                /** @description the most */
                to: number;
            };
            /** @description as MusicXML writes it */
            clef: {
                /** @description G, F or C */
                sign: string;
                /** @description the line it stands on, 1 the lowest */
                line: number;
                /** @description octaves by which it is read higher, or lower below zero */
                octaveChange: number;
            };
            /** @description what to add to a written pitch for the sounding one */
            soundingMinusWrittenSemitones: number;
            /** @description how a hand lies: one-finger-per-fret or two-frets-per-finger */
            handFrame: string;
            /** @description the frets there are, where not every semitone has one */
            partialFrets?: {
                /** @description what players call it, 6.5 for 6+ */
                fret: number;
                /** @description above the nut */
                semitones: number;
            }[];
            /** @description strings that begin farther up the neck */
            shortStrings: {
                /** @description 1 at the highest-sounding side */
                string: number;
                /** @description where its open note lies */
                startsAtFret: number;
            }[];
            /** @description the most usual first */
            tunings: {
                /** @description what addresses call it */
                id: string;
                /** @description its name, with ASCII accidentals */
                name: string;
                /** @description low to high, the principal string of each course */
                strings: string[];
                /** @description the strings of each course, the principal one first */
                courses: string[][];
                /** @description whether a course sounds below the one before it */
                reentrant: boolean;
            }[];
            /** @description where that is published: author, title, year */
            sources: string[];
            /** @description fields that are from memory */
            recalled: string[];
            /** @description what else there is to say */
            note?: string;
        };
        /** @description RFC 9457 problem details. */
        Problem: {
            /** @description a page about this kind of problem */
            type: string;
            /** @description what kind of problem it is, in words */
            title: string;
            /** @description the status of the answer */
            status: number;
            /** @description what is wrong, in one or several sentences */
            detail: string;
            /** @description everything that is wrong */
            errors: {
                /** @description a parameter, a field of the body, or a header field */
                field: string;
                /** @description what was sent, perhaps shortened */
                value: string;
                /** @description what would be right */
                expected: string;
            }[];
        };
        /** @description Addresses below /v1/, with their queries: 1 to 50. */
        BatchRequest: {
            /** @description what is asked for */
            paths: string[];
        };
        /** @description An answer for each path, in their order. */
        BatchAnswer: {
            /** @description in the order of the paths */
            answers: {
                /** @description as it was asked for */
                path: string;
                /** @description as it would be if it were asked for alone */
                status: number;
                /** @description the media type of the body */
                type: string;
                /** @description JSON as it is, text as a string, a file of bytes in base64 */
                body: unknown;
            }[];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    families: {
        parameters: {
            query?: {
                /** @description the most families */
                limit?: number;
                /** @description how many answers to pass over before the first */
                offset?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All 66 families with their modes */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description how many there are in all */
                        total: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        /** @description those with a name of the trade first */
                        families: components["schemas"]["Family"][];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    family: {
        parameters: {
            query?: {
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One family */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Family"];
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    modes: {
        parameters: {
            query?: {
                /**
                 * @description a part of a name or alias
                 * @example dominant
                 */
                name?: string;
                /** @description degrees the mode must have: b3,%234 */
                contains?: string;
                /**
                 * @description the most answers
                 * @example 5
                 */
                limit?: number;
                /** @description how many answers to pass over before the first */
                offset?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Modes by name, alias or degrees */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description how many there are in all */
                        total: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        /** @description the best match first */
                        modes: {
                            /** @description the seven steps written together */
                            id: string;
                            /** @description what addresses call the mode */
                            slug: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                            /** @description the degree of its family's first mode on which it stands */
                            degree: number;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            /** @description what else it is called */
                            aliases: string[];
                            /** @description the family, and where in it the mode stands */
                            family: {
                                /** @description the steps of its brightest mode, written together */
                                id: string;
                                /** @description what addresses call the family */
                                slug: string;
                                /** @description its name, with ASCII accidentals */
                                name: string;
                                /** @description the degree of its family's first mode on which it stands */
                                degree: number;
                            };
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mode: {
        parameters: {
            query?: {
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One mode */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Mode"];
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    scale: {
        parameters: {
            query?: {
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A mode on a root */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Scale"];
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    related: {
        parameters: {
            query?: {
                /**
                 * @description the fewest notes in common
                 * @example 6
                 */
                shared?: number;
                /**
                 * @description the most scales by shared notes
                 * @example 10
                 */
                limit?: number;
                /** @description how many scales by shared notes to pass over before the first */
                offset?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example dorian
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Scales that belong with a scale */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the other modes of the family, on the same root */
                        parallel: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            /** @description from the scale asked for */
                            moved: components["schemas"]["Moved"][];
                        }[];
                        /** @description the other modes of the family, of the same notes */
                        relative: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                        }[];
                        /** @description modes on the same root in which one degree lies a semitone elsewhere */
                        neighbours: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            moved: components["schemas"]["Moved"];
                        }[];
                        /** @description how many scales have so many notes in common */
                        total: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        /** @description scales on any root with so many notes in common, the most first */
                        shared: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            /** @description pitch classes in common */
                            count: number;
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    fretboard: {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example mandolin
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description what stands in the marks of a picture
                 * @example notes
                 */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example dorian
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every place of every note on a neck */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the instrument's id */
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        /** @description the tuning's id */
                        tuningId: string;
                        /** @description the tuning's name */
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
                            /** @description as it was typed */
                            text: string;
                            /** @description scientific, helmholtz or letters */
                            notation: string;
                            /** @description whether the octaves were not written but guessed */
                            guessed: boolean;
                            /** @description open strings that the text could also have meant */
                            alternative?: string[];
                        };
                        /** @description other tunings of the catalogue with these open strings */
                        alsoTuned: {
                            /** @description the instrument's id */
                            instrument: string;
                            /** @description the tuning's id */
                            tuning: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                        }[];
                        /** @description the fret on which a capo lies, 0 without one */
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        /** @description the last fret */
                        frets: number;
                        /** @description root and mode */
                        name: string;
                        /** @description the root */
                        root: string;
                        /** @description where its notes lie, string by string */
                        places: {
                            /** @description 1 at the highest-sounding side */
                            string: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            fret: number;
                            /** @description a note, or a note with its octave, in ASCII */
                            note: string;
                            /** @description 1 to 7, counted from the root */
                            degree: number;
                            /** @description the MIDI note number as it sounds, 60 for middle C */
                            midi: number;
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fretboard-svg": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example mandolin
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description what stands in the marks of a picture
                 * @example notes
                 */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example dorian
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every place of every note on a neck, as .svg */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fretboard-txt": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example mandolin
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description what stands in the marks of a picture
                 * @example notes
                 */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example dorian
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every place of every note on a neck, as .txt */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    fingerings: {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example guitar-7
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description how the scale is laid out
                 * @example three-per-string
                 */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order in which notes are played */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /** @description beats a minute; the lower number of the meter says what a beat is */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /**
                 * @description the most answers
                 * @example 2
                 */
                limit?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ways to play a scale, best first */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the instrument's id */
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        /** @description the tuning's id */
                        tuningId: string;
                        /** @description the tuning's name */
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
                            /** @description as it was typed */
                            text: string;
                            /** @description scientific, helmholtz or letters */
                            notation: string;
                            /** @description whether the octaves were not written but guessed */
                            guessed: boolean;
                            /** @description open strings that the text could also have meant */
                            alternative?: string[];
                        };
                        /** @description other tunings of the catalogue with these open strings */
                        alsoTuned: {
                            /** @description the instrument's id */
                            instrument: string;
                            /** @description the tuning's id */
                            tuning: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                        }[];
                        /** @description the fret on which a capo lies, 0 without one */
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        /** @description the last fret */
                        frets: number;
                        /** @description root and mode */
                        name: string;
                        /** @description the root */
                        root: string;
                        /** @description how it is laid out, as in the query */
                        style: string;
                        /** @description the reach that was allowed, from finger 1 to finger 4 */
                        handReachMm: number;
                        /** @description the best first; across the neck, area after area */
                        fingerings: components["schemas"]["Fingering"][];
                        /** @description across the neck: how the hand gets from each area to the next */
                        shifts?: {
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            fromFret: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            toFret: number;
                            /** @description how far that is along the neck */
                            distanceMm: number;
                        }[];
                        /** @description why it cannot be played; absent where it can */
                        reason?: string;
                        /**
                         * @description the same for programs: these words stay
                         * @enum {string}
                         */
                        reasonKind?: "notes-missing" | "beyond-the-neck" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        /** @description strings on which the hand would have to open wider than it can */
                        beyondReach?: {
                            /** @description 1 at the highest-sounding side */
                            string: number;
                            /** @description the frets that would have to be played */
                            frets: number[];
                            /** @description from the first of them to the last */
                            spanMm: number;
                        }[];
                        /** @description the nearest that can be played, where what was asked for cannot */
                        alternative?: {
                            /** @description how it is laid out, as in the query */
                            style: string;
                            /** @description where to begin; absent where only anywhere will do */
                            fret?: number;
                            fingering: components["schemas"]["Fingering"];
                        };
                        /** @description what to take care of when it is practised */
                        cautions: string[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fingerings-svg": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example guitar-7
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description how the scale is laid out
                 * @example three-per-string
                 */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order in which notes are played */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /** @description beats a minute; the lower number of the meter says what a beat is */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /**
                 * @description the most answers
                 * @example 2
                 */
                limit?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ways to play a scale, best first, as .svg */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fingerings-txt": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example guitar-7
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description how the scale is laid out
                 * @example three-per-string
                 */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order in which notes are played */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /** @description beats a minute; the lower number of the meter says what a beat is */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /**
                 * @description the most answers
                 * @example 2
                 */
                limit?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ways to play a scale, best first, as .txt */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fingerings-mid": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example guitar-7
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description how the scale is laid out
                 * @example three-per-string
                 */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order in which notes are played */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /** @description beats a minute; the lower number of the meter says what a beat is */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /**
                 * @description the most answers
                 * @example 2
                 */
                limit?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ways to play a scale, best first, as .mid */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "audio/midi": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This cannot be played */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "fingerings-musicxml": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example guitar-7
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /**
                 * @description how the scale is laid out
                 * @example three-per-string
                 */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order in which notes are played */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /** @description beats a minute; the lower number of the meter says what a beat is */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /**
                 * @description the most answers
                 * @example 2
                 */
                limit?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a mode: its steps (2131212), its slug (phrygian-dominant), or a name
                 * @example phrygian-dominant
                 */
                mode: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ways to play a scale, best first, as .musicxml */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/vnd.recordare.musicxml+xml": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This cannot be played */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    round: {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example bass-4
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /** @description how the scale is laid out */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order of the seven modes */
                order?: "parent" | "brightness" | "fewest-moves";
                /** @description whether the modes share one area or each has its narrowest own */
                sharing?: "one-area" | "own-areas";
                /** @description how many necks stand beside one another in a picture */
                columns?: number;
                /**
                 * @description the order in which notes are played
                 * @example thirds
                 */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /**
                 * @description beats a minute; the lower number of the meter says what a beat is
                 * @example 96
                 */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The seven modes of a family from one root in one area of the neck */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the instrument's id */
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        /** @description the tuning's id */
                        tuningId: string;
                        /** @description the tuning's name */
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
                            /** @description as it was typed */
                            text: string;
                            /** @description scientific, helmholtz or letters */
                            notation: string;
                            /** @description whether the octaves were not written but guessed */
                            guessed: boolean;
                            /** @description open strings that the text could also have meant */
                            alternative?: string[];
                        };
                        /** @description other tunings of the catalogue with these open strings */
                        alsoTuned: {
                            /** @description the instrument's id */
                            instrument: string;
                            /** @description the tuning's id */
                            tuning: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                        }[];
                        /** @description the fret on which a capo lies, 0 without one */
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        /** @description the last fret */
                        frets: number;
                        /** @description what addresses call the family */
                        family: string;
                        /** @description the family's name */
                        familyName: string;
                        /** @description the root */
                        root: string;
                        /** @description the order of the seven modes, as in the query */
                        order: string;
                        /** @description how it is laid out, as in the query */
                        style: string;
                        /** @description whether the modes share one area, as in the query */
                        sharing: string;
                        /** @description the order in which notes are played, as in the query */
                        pattern: string;
                        /** @description how long each note lasts */
                        noteValue: string;
                        /** @description beats a minute, the beat being the meter's lower number */
                        tempoBpm: number;
                        /** @description the time signature */
                        meter: string;
                        /** @description bars of clicks before the first note */
                        countInBars: number;
                        /** @description from the first click of the count-in to the end of the last bar */
                        durationSeconds: number;
                        /** @description the frets that all of it is played between; null where it is not played */
                        area: {
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            from: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            to: number;
                        } | null;
                        /** @description the seven, in the order asked for, all from the same root */
                        modes: {
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description its seven steps, written together */
                            id: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                            /** @description the degree of its family's first mode on which it stands */
                            degree: number;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            /** @description from the mode before it in the round */
                            moved: components["schemas"]["Moved"][];
                            /** @description how it is played; null where it is left out */
                            fingering: components["schemas"]["Fingering"] | null;
                            /** @description the order in which the fingering's notes are played, as indices; empty without one */
                            sequence: number[];
                            /** @description when its first note is played */
                            startSeconds: number | null;
                            /** @description why it cannot be played; absent where it can */
                            reason?: string;
                            /**
                             * @description the same for programs: these words stay
                             * @enum {string}
                             */
                            reasonKind?: "notes-missing" | "beyond-the-neck" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        }[];
                        /** @description why it cannot be played; absent where it can */
                        reason?: string;
                        /**
                         * @description the same for programs: these words stay
                         * @enum {string}
                         */
                        reasonKind?: "notes-missing" | "beyond-the-neck" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        /** @description the nearest that can be played, where what was asked for cannot */
                        alternative?: {
                            /** @description how it is laid out, as in the query */
                            style: string;
                            /** @description from which it can be played */
                            fret: number;
                        };
                        /** @description what to take care of when it is practised */
                        cautions: string[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "round-svg": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example bass-4
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /** @description how the scale is laid out */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order of the seven modes */
                order?: "parent" | "brightness" | "fewest-moves";
                /** @description whether the modes share one area or each has its narrowest own */
                sharing?: "one-area" | "own-areas";
                /** @description how many necks stand beside one another in a picture */
                columns?: number;
                /**
                 * @description the order in which notes are played
                 * @example thirds
                 */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /**
                 * @description beats a minute; the lower number of the meter says what a beat is
                 * @example 96
                 */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The seven modes of a family from one root in one area of the neck, as .svg */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "round-txt": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example bass-4
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /** @description how the scale is laid out */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order of the seven modes */
                order?: "parent" | "brightness" | "fewest-moves";
                /** @description whether the modes share one area or each has its narrowest own */
                sharing?: "one-area" | "own-areas";
                /** @description how many necks stand beside one another in a picture */
                columns?: number;
                /**
                 * @description the order in which notes are played
                 * @example thirds
                 */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /**
                 * @description beats a minute; the lower number of the meter says what a beat is
                 * @example 96
                 */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The seven modes of a family from one root in one area of the neck, as .txt */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "round-mid": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example bass-4
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /** @description how the scale is laid out */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order of the seven modes */
                order?: "parent" | "brightness" | "fewest-moves";
                /** @description whether the modes share one area or each has its narrowest own */
                sharing?: "one-area" | "own-areas";
                /** @description how many necks stand beside one another in a picture */
                columns?: number;
                /**
                 * @description the order in which notes are played
                 * @example thirds
                 */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /**
                 * @description beats a minute; the lower number of the meter says what a beat is
                 * @example 96
                 */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The seven modes of a family from one root in one area of the neck, as .mid */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "audio/midi": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This cannot be played */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    "round-musicxml": {
        parameters: {
            query?: {
                /**
                 * @description an instrument id or name
                 * @example bass-4
                 */
                instrument?: string;
                /** @description a tuning id of the instrument, or open strings low to high: B1-E2-A2-D3-G3-B3-E4, E A d g b e', or letters alone (DADGAD) whose octaves are then guessed */
                tuning?: string;
                /** @description semitones by which every string is tuned up, or down below zero */
                transpose?: number;
                /** @description the fret a capo lies on, 0 for none */
                capo?: number;
                /** @description the strings a partial capo covers, 1 at the highest-sounding side: 1,2,3; all of them where absent */
                capoStrings?: string;
                /** @description the scale length in millimetres, or those of the lowest and the highest string with fanned frets: 686-648 */
                scaleLength?: string;
                /** @description the last fret, where it is not the instrument's own */
                frets?: number;
                /** @description how the scale is laid out */
                style?: "position" | "three-per-string" | "one-string" | "two-octaves" | "whole-range" | "across-the-neck";
                /** @description the fret at which to begin, or the next above it from which it can be played; 0 for the open position; across the neck begins at the nut */
                fret?: number;
                /** @description where open strings may be played */
                open?: "near-the-nut" | "anywhere" | "never";
                /** @description the size of the hand */
                handSize?: "small" | "medium" | "large";
                /** @description how far the hand reaches from finger 1 to finger 4, in millimetres, in place of its size */
                reach?: number;
                /** @description what stands in the marks of a picture */
                labels?: "degrees" | "notes" | "fingers";
                /** @description which way round a picture is drawn */
                hand?: "right" | "left";
                /** @description the order of the seven modes */
                order?: "parent" | "brightness" | "fewest-moves";
                /** @description whether the modes share one area or each has its narrowest own */
                sharing?: "one-area" | "own-areas";
                /** @description how many necks stand beside one another in a picture */
                columns?: number;
                /**
                 * @description the order in which notes are played
                 * @example thirds
                 */
                pattern?: "up" | "down" | "up-and-down" | "thirds" | "fourths" | "groups-of-three" | "groups-of-four" | "random-walk" | "degree-and-root";
                /** @description how long each note lasts */
                value?: "whole" | "half" | "quarter" | "eighth" | "sixteenth" | "thirty-second" | "dotted-whole" | "dotted-half" | "dotted-quarter" | "dotted-eighth" | "dotted-sixteenth" | "dotted-thirty-second" | "whole-triplet" | "half-triplet" | "quarter-triplet" | "eighth-triplet" | "sixteenth-triplet" | "thirty-second-triplet";
                /**
                 * @description beats a minute; the lower number of the meter says what a beat is
                 * @example 96
                 */
                tempo?: number;
                /**
                 * @description the time signature: 4/4, 3/4, 7/8
                 * @example 4/4
                 */
                meter?: string;
                /** @description bars that each mode fills; where absent, as many as its pattern takes once */
                bars?: number;
                /** @description bars of clicks before the first note */
                countIn?: number;
                /** @description how often each mode is played before the next */
                repeats?: number;
                /** @description the fewest beats of rest between two modes */
                rest?: number;
                /** @description whether the root is held under the notes of a .mid */
                drone?: "true" | "false";
                /** @description whether chords sound under the notes of a .mid: true for the mode's own two, or the degrees they stand on, a bar each: 1,4 */
                vamp?: string;
                /** @description of a random walk, which is the same for the same seed */
                seed?: number;
                /** @description how a .musicxml spells: each letter once, or for the eye */
                spelling?: "strict" | "readable";
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
            };
            header?: never;
            path: {
                /**
                 * @description a family: its slug (harmonic-minor) or the steps of its brightest mode
                 * @example harmonic-minor
                 */
                family: string;
                /**
                 * @description a root: A, Bb, F%23 or Fs
                 * @example A
                 */
                root: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The seven modes of a family from one root in one area of the neck, as .musicxml */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/vnd.recordare.musicxml+xml": string;
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This cannot be played */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    compare: {
        parameters: {
            query: {
                /**
                 * @description a mode
                 * @example dorian
                 */
                a: string;
                /**
                 * @description another mode
                 * @example phrygian
                 */
                b: string;
                /**
                 * @description the root both stand on
                 * @example A
                 */
                root?: string;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Two modes on one root, degree by degree */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the root, as it was asked for or as it is spelled */
                        root: string;
                        /** @description the one */
                        a: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                        };
                        /** @description the other */
                        b: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                        };
                        /** @description both beside each other */
                        degrees: {
                            /** @description 1 to 7, counted from the root */
                            degree: number;
                            /** @description in the one */
                            a: string;
                            /** @description in the other */
                            b: string;
                            /** @description semitones from the one to the other, down below zero */
                            by: number;
                        }[];
                        /** @description the degrees that lie elsewhere in the other */
                        moved: components["schemas"]["Moved"][];
                        /** @description semitones by which notes move, in all */
                        distance: number;
                        /** @description pitch classes in common */
                        shared: number;
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    route: {
        parameters: {
            query: {
                /**
                 * @description the mode to begin with
                 * @example dorian
                 */
                from: string;
                /**
                 * @description the mode to arrive at
                 * @example phrygian-dominant
                 */
                to: string;
                /**
                 * @description the root both stand on
                 * @example D
                 */
                root?: string;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A shortest chain of neighbours between two modes */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the root, as it was asked for or as it is spelled */
                        root: string;
                        /** @description what addresses call the mode */
                        from: string;
                        /** @description what addresses call the mode */
                        to: string;
                        /** @description semitones by which notes move, in all */
                        distance: number;
                        /** @description from the one to the other; one degree moves by a semitone at each */
                        steps: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            /** @description from the step before; null at the first */
                            moved: components["schemas"]["Moved"] | null;
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    search: {
        parameters: {
            query?: {
                /**
                 * @description notes the scale must hold, the likely root first: A,B,C,D,E,F,G%23
                 * @example A,B,C,D,E,F,G#
                 */
                notes?: string;
                /**
                 * @description chords whose notes the scale must hold, in place of notes or beside them: Am,E7 or Dm7,G7(b9),Cmaj7
                 * @example Am,E7
                 */
                chords?: string;
                /** @description only scales on this root */
                root?: string;
                /** @description the most answers */
                limit?: number;
                /** @description how many answers to pass over before the first */
                offset?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Scales that hold the given notes, or the notes of the given chords */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description the notes asked for, those of chords too, each once */
                        asked: string[];
                        /** @description the chords asked for */
                        chords?: {
                            /** @description as it was asked for */
                            symbol: string;
                            /** @description from its root upwards */
                            notes: string[];
                        }[];
                        /** @description how many there are in all */
                        total: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        /** @description the best match first */
                        matches: {
                            /** @description root and mode */
                            name: string;
                            /** @description what addresses call the mode */
                            mode: string;
                            /** @description the root, as it was asked for or as it is spelled */
                            root: string;
                            /** @description by degree, each of the seven letters once */
                            notes: string[];
                            /** @description asked for, and not in it */
                            missing: string[];
                            /** @description in it, and not asked for */
                            extra: string[];
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    instruments: {
        parameters: {
            query?: {
                /**
                 * @description words that an instrument or one of its tunings is known by: five string bass, low B
                 * @example five string bass
                 */
                q?: string;
                /**
                 * @description the most instruments
                 * @example 3
                 */
                limit?: number;
                /** @description how many answers to pass over before the first */
                offset?: number;
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The instruments and their tunings, all or those that words are found in */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @description how many are served in all */
                        total: number;
                        /** @description how many a search speaks of */
                        foundTotal: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        /** @description those of this page */
                        instruments: {
                            /** @description what addresses call it */
                            id: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                            /** @description what else it is called */
                            aliases: string[];
                            /** @description the group of instruments it belongs to */
                            kind: string;
                            /** @description how many strings or courses */
                            strings: number;
                            /** @description that of fingerings, where no other is asked for */
                            scaleLengthMm: number;
                            /** @description what is built; not a limit */
                            scaleLengthRangeMm: {
                                /** @description the least */
                                from: number;
                                /** @description the most */
                                to: number;
                            };
                            /** @description the last fret, where no other is asked for */
                            frets: number;
                            /** @description the fewest and the most frets that are built */
                            fretsRange: {
                                /** @description the least */
                                from: number;
                                /** @description the most */
                                to: number;
                            };
                            /** @description as MusicXML writes it */
                            clef: {
                                /** @description G, F or C */
                                sign: string;
                                /** @description the line it stands on, 1 the lowest */
                                line: number;
                                /** @description octaves by which it is read higher, or lower below zero */
                                octaveChange: number;
                            };
                            /** @description what to add to a written pitch for the sounding one */
                            soundingMinusWrittenSemitones: number;
                            /** @description how a hand lies: one-finger-per-fret or two-frets-per-finger */
                            handFrame: string;
                            /** @description the frets there are, where not every semitone has one */
                            partialFrets?: {
                                /** @description what players call it, 6.5 for 6+ */
                                fret: number;
                                /** @description above the nut */
                                semitones: number;
                            }[];
                            /** @description strings that begin farther up the neck */
                            shortStrings: {
                                /** @description 1 at the highest-sounding side */
                                string: number;
                                /** @description where its open note lies */
                                startsAtFret: number;
                            }[];
                            /** @description the most usual first */
                            tunings: {
                                /** @description what addresses call it */
                                id: string;
                                /** @description its name, with ASCII accidentals */
                                name: string;
                                /** @description low to high, the principal string of each course */
                                strings: string[];
                                /** @description the strings of each course, the principal one first */
                                courses: string[][];
                                /** @description whether a course sounds below the one before it */
                                reentrant: boolean;
                            }[];
                            /** @description where that is published: author, title, year */
                            sources: string[];
                            /** @description fields that are from memory */
                            recalled: string[];
                            /** @description what else there is to say */
                            note?: string;
                            /** @description ids of the tunings that a search speaks of */
                            found?: string[];
                        }[];
                        /** @description instruments that cannot be served, and why */
                        notServed: {
                            /** @description what addresses call it */
                            id: string;
                            /** @description its name, with ASCII accidentals */
                            name: string;
                            /** @description what else it is called */
                            aliases: string[];
                            /** @description why it is not served */
                            reason: string;
                        }[];
                    };
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    instrument: {
        parameters: {
            query?: {
                /** @description the version of the data, as the header data-version gives it: an answer to an address with the present version never changes */
                v?: string;
                /** @description the fields wanted of an answer in JSON, those within others after a dot: name,chords.triads */
                fields?: string;
            };
            header?: never;
            path: {
                /**
                 * @description an instrument: its id or a name
                 * @example bass-4
                 */
                instrument: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One instrument */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Instrument"];
                };
            };
            /** @description What the client has is still what there is */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing has this name */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    health: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether the server answers */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /**
                         * @description ok where there is an answer at all
                         * @constant
                         */
                        status: "ok";
                        /** @description how many modes it knows */
                        modes: number;
                        /** @description how many instruments it knows */
                        instruments: number;
                        /** @description the version of the data */
                        dataVersion: string;
                        /**
                         * @description whether and where requests are counted: shared-lost while the shared count cannot be reached
                         * @enum {string}
                         */
                        counting: "off" | "in-memory" | "shared" | "shared-lost";
                    };
                };
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ready: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether the server takes requests; 503 while it stops */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /**
                         * @description stopping: what was begun is finished, nothing new taken
                         * @enum {string}
                         */
                        status: "ready" | "stopping";
                    };
                };
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    batch: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "paths": [
                 *         "/v1/modes/dorian/A",
                 *         "/v1/families/harmonic-minor?fields=name,steps"
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["BatchRequest"];
            };
        };
        responses: {
            /** @description An answer for each path, in their order */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchAnswer"];
                };
            };
            /** @description A parameter is not what it should be */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description What was sent is too much */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description What was sent is not JSON */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reference: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The reference, for people */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    openapi: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description This document */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": Record<string, never>;
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    metrics: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Figures of the server, as Prometheus reads them */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description The answer cannot be had in that form */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
