/** What the server writes before the worker's own lines. */
declare const BUILD: string;
declare const FILES: string[];
