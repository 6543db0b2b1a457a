// SPDX-License-Identifier: Apache-2.0
// Only here so that the precompiled header that core shares has a target to live in.
