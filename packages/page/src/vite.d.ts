/// <reference types="vite/client" />

declare const __VERSION__: string;
