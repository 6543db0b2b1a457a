// SPDX-License-Identifier: Apache-2.0
// Only here so that a precompiled header has a target to live in.
