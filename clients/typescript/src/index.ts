// Everything that a caller needs.

export { Client, type CallOptions, type Options } from './client.js';
export type { Address, AddressSource } from './carrier.js';
export { new_request } from './environment.js';
export * from './errors.js';
export * from './generated.js';
