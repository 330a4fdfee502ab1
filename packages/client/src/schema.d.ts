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
        /** Scales that hold the given notes */
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
            /** @description the steps of its brightest mode */
            id: string;
            slug: string;
            name: string;
            aliases: string[];
            steps: number[];
            modes: components["schemas"]["ModeSummary"][];
        };
        ModeSummary: {
            /** @description the seven steps written together */
            id: string;
            slug: string;
            name: string;
            /** @description the degree of its family's first mode on which it stands */
            degree: number;
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            aliases: string[];
        };
        Mode: {
            /** @description the seven steps written together */
            id: string;
            slug: string;
            name: string;
            systematicName: string;
            aliases: string[];
            names: {
                name: string;
                sources: string[];
                tradition?: string;
                recalled: boolean;
            }[];
            steps: number[];
            semitones: number[];
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            brightness: number;
            family: {
                id: string;
                slug: string;
                name: string;
                degree: number;
            };
            base: {
                name: string;
                moved: components["schemas"]["Moved"][];
            };
        };
        /** @description A degree that lies elsewhere in another mode on the same root. */
        Moved: {
            degree: number;
            /** @description semitones up or down */
            by: number;
        };
        Scale: {
            /** @description the seven steps written together */
            id: string;
            slug: string;
            /** @description root and mode */
            name: string;
            systematicName: string;
            aliases: string[];
            names: {
                name: string;
                sources: string[];
                tradition?: string;
                recalled: boolean;
            }[];
            steps: number[];
            semitones: number[];
            /** @description degrees against the major scale: b3, #4, bb7 */
            formula: string[];
            brightness: number;
            family: {
                id: string;
                slug: string;
                name: string;
                degree: number;
            };
            base: {
                name: string;
                moved: components["schemas"]["Moved"][];
            };
            /** @description a note, or a note with its octave, in ASCII */
            root: string;
            modeName: string;
            /** @description strict: each of the seven letters once */
            notes: string[];
            /** @description for the eye: at most one accidental each where strict needs more than a double one */
            readable: string[];
            parent: {
                name: string;
                /** @description the mode's slug */
                mode: string;
                /** @description a note, or a note with its octave, in ASCII */
                root: string;
            };
            /** @description the enharmonic root with the kindest spelling */
            kindest: string;
            chords: {
                triads: {
                    degree: number;
                    name: string;
                    kind: string;
                    notes: string[];
                }[];
                sevenths: {
                    degree: number;
                    name: string;
                    kind: string;
                    notes: string[];
                }[];
            };
        };
        Fingering: {
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
            cost: {
                /**
                 * @description notes that no finger reaches: never any
                 * @constant
                 */
                outOfReach: 0;
                travelMm: number;
                shifts: number;
                stretchMm: number;
                stringChanges: number;
            };
            notes: {
                /** @description 1 at the highest-sounding side */
                string: number;
                /** @description 0 for the open string, else the fret as the inlays count it */
                fret: number;
                /** @description a note, or a note with its octave, in ASCII */
                note: string;
                degree: number;
                midi: number;
                finger: number;
            }[];
        };
        Instrument: {
            id: string;
            name: string;
            aliases: string[];
            /** @description the group of instruments it belongs to */
            kind: string;
            strings: number;
            scaleLengthMm: number;
            scaleLengthRangeMm: {
                from: number;
                to: number;
            };
            frets: number;
            fretsRange: {
                from: number;
                to: number;
            };
            clef: {
                sign: string;
                line: number;
                octaveChange: number;
            };
            soundingMinusWrittenSemitones: number;
            handFrame: string;
            partialFrets?: {
                fret: number;
                semitones: number;
            }[];
            shortStrings: {
                string: number;
                startsAtFret: number;
            }[];
            tunings: {
                id: string;
                name: string;
                /** @description low to high, the principal string of each course */
                strings: string[];
                courses: string[][];
                reentrant: boolean;
            }[];
            sources: string[];
            /** @description fields that are from memory */
            recalled: string[];
            note?: string;
        };
        /** @description RFC 9457 problem details. */
        Problem: {
            /** @description a page about this kind of problem */
            type: string;
            title: string;
            status: number;
            detail: string;
            errors: {
                field: string;
                value: string;
                expected: string;
            }[];
        };
        /** @description Addresses below /v1/, with their queries: 1 to 50. */
        BatchRequest: {
            paths: string[];
        };
        /** @description An answer for each path, in their order. */
        BatchAnswer: {
            answers: {
                path: string;
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
                        total: number;
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
                        modes: {
                            /** @description the seven steps written together */
                            id: string;
                            slug: string;
                            name: string;
                            /** @description the degree of its family's first mode on which it stands */
                            degree: number;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            aliases: string[];
                            family: {
                                id: string;
                                slug: string;
                                name: string;
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
                        parallel: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
                            moved: components["schemas"]["Moved"][];
                        }[];
                        relative: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
                        }[];
                        neighbours: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
                            moved: components["schemas"]["Moved"];
                        }[];
                        shared: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
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
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        tuningId: string;
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
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
                            instrument: string;
                            tuning: string;
                            name: string;
                        }[];
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        frets: number;
                        name: string;
                        /** @description a note, or a note with its octave, in ASCII */
                        root: string;
                        places: {
                            /** @description 1 at the highest-sounding side */
                            string: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            fret: number;
                            /** @description a note, or a note with its octave, in ASCII */
                            note: string;
                            degree: number;
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
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        tuningId: string;
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
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
                            instrument: string;
                            tuning: string;
                            name: string;
                        }[];
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        frets: number;
                        name: string;
                        /** @description a note, or a note with its octave, in ASCII */
                        root: string;
                        style: string;
                        /** @description the reach that was allowed */
                        handReachMm: number;
                        fingerings: components["schemas"]["Fingering"][];
                        /** @description across the neck: how the hand gets from each area to the next */
                        shifts?: {
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            fromFret: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            toFret: number;
                            distanceMm: number;
                        }[];
                        reason?: string;
                        /**
                         * @description the same for programs: these words stay
                         * @enum {string}
                         */
                        reasonKind?: "notes-missing" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        /** @description strings on which the hand would have to open wider than it can */
                        beyondReach?: {
                            /** @description 1 at the highest-sounding side */
                            string: number;
                            frets: number[];
                            spanMm: number;
                        }[];
                        alternative?: {
                            style: string;
                            fingering: components["schemas"]["Fingering"];
                        };
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
                        instrument: string;
                        /** @description open strings, low to high, as they are tuned */
                        tuning: string[];
                        tuningId: string;
                        tuningName: string;
                        /** @description how a tuning that was typed was taken */
                        reading?: {
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
                            instrument: string;
                            tuning: string;
                            name: string;
                        }[];
                        capo: number;
                        /** @description the strings that the capo shortens */
                        capoStrings: number[];
                        /** @description of the longest string */
                        scaleLengthMm: number;
                        /** @description of each string, low to high */
                        scaleLengthsMm: number[];
                        frets: number;
                        family: string;
                        familyName: string;
                        /** @description a note, or a note with its octave, in ASCII */
                        root: string;
                        order: string;
                        style: string;
                        sharing: string;
                        pattern: string;
                        noteValue: string;
                        tempoBpm: number;
                        meter: string;
                        countInBars: number;
                        /** @description from the first click of the count-in to the end of the last bar */
                        durationSeconds: number;
                        area: {
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            from: number;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            to: number;
                        } | null;
                        modes: {
                            mode: string;
                            id: string;
                            name: string;
                            degree: number;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            notes: string[];
                            /** @description from the mode before it in the round */
                            moved: components["schemas"]["Moved"][];
                            fingering: components["schemas"]["Fingering"] | null;
                            /** @description the order in which the fingering's notes are played, as indices; empty without one */
                            sequence: number[];
                            /** @description when its first note is played */
                            startSeconds: number | null;
                            reason?: string;
                            /**
                             * @description the same for programs: these words stay
                             * @enum {string}
                             */
                            reasonKind?: "notes-missing" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        }[];
                        reason?: string;
                        /**
                         * @description the same for programs: these words stay
                         * @enum {string}
                         */
                        reasonKind?: "notes-missing" | "no-octave" | "no-two-octaves" | "no-whole-octave" | "no-octave-on-a-string" | "one-string-only" | "strings-do-not-rise" | "off-the-neck" | "too-wide" | "too-many-fingers" | "gap-in-chain" | "chain-is-for-one-scale" | "no-shared-area" | "modes-left-out";
                        alternative?: {
                            style: string;
                            /** @description 0 for the open string, else the fret as the inlays count it */
                            fret: number;
                        };
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
                        /** @description a note, or a note with its octave, in ASCII */
                        root: string;
                        a: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            notes: string[];
                        };
                        b: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            /** @description degrees against the major scale: b3, #4, bb7 */
                            formula: string[];
                            notes: string[];
                        };
                        degrees: {
                            degree: number;
                            /** @description a note, or a note with its octave, in ASCII */
                            a: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            b: string;
                            by: number;
                        }[];
                        moved: components["schemas"]["Moved"][];
                        /** @description semitones moved in all */
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
                        /** @description a note, or a note with its octave, in ASCII */
                        root: string;
                        from: string;
                        to: string;
                        distance: number;
                        steps: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
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
            query: {
                /**
                 * @description notes the scale must hold, the likely root first: A,B,C,D,E,F,G%23
                 * @example A,B,C,D,E,F,G#
                 */
                notes: string;
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
            /** @description Scales that hold the given notes */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        asked: string[];
                        total: number;
                        /** @description how many came before the first of these */
                        offset: number;
                        /** @description the address of what comes after these */
                        next: string | null;
                        /** @description the address of what comes before these */
                        previous: string | null;
                        matches: {
                            name: string;
                            /** @description the mode's slug */
                            mode: string;
                            /** @description a note, or a note with its octave, in ASCII */
                            root: string;
                            notes: string[];
                            missing: string[];
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
                        instruments: {
                            id: string;
                            name: string;
                            aliases: string[];
                            /** @description the group of instruments it belongs to */
                            kind: string;
                            strings: number;
                            scaleLengthMm: number;
                            scaleLengthRangeMm: {
                                from: number;
                                to: number;
                            };
                            frets: number;
                            fretsRange: {
                                from: number;
                                to: number;
                            };
                            clef: {
                                sign: string;
                                line: number;
                                octaveChange: number;
                            };
                            soundingMinusWrittenSemitones: number;
                            handFrame: string;
                            partialFrets?: {
                                fret: number;
                                semitones: number;
                            }[];
                            shortStrings: {
                                string: number;
                                startsAtFret: number;
                            }[];
                            tunings: {
                                id: string;
                                name: string;
                                /** @description low to high, the principal string of each course */
                                strings: string[];
                                courses: string[][];
                                reentrant: boolean;
                            }[];
                            sources: string[];
                            /** @description fields that are from memory */
                            recalled: string[];
                            note?: string;
                            /** @description ids of the tunings that a search speaks of */
                            found?: string[];
                        }[];
                        /** @description instruments that cannot be served, and why */
                        notServed: {
                            id: string;
                            name: string;
                            aliases: string[];
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
                        /** @constant */
                        status: "ok";
                        modes: number;
                        instruments: number;
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
